package batchwright.explain.cost;

import batchwright.food.Pack;
import batchwright.quantity.Money;

/**
 * A food that the cheapest plan does not buy, but would at a lower price.
 *
 * @param pack as it is sold
 * @param entersAt at this price of the pack, or of a step of loose goods, a plan that buys it is cheaper than any without
 * @param proven whether it is proven that a cent more is too much; else it may enter at a higher price
 */
public record NearMiss(Pack pack, Money entersAt, boolean proven) {
    /** By how much the price has to fall, 0 to 1. */
    public double shareOff() {
        return 1 - (double) entersAt.minor() / pack.price().minor();
    }
}
