package batchwright.food;

import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How a shop sells a food: in packs, or loose by weight. Of loose goods, one pack is one step on the shop's scale.
 *
 * @param label what the shelf says: bag, dozen, loose
 * @param price of the pack; of one step of loose goods, rounded up to the cent, so that the checkout can only be cheaper
 * @param loose the price by weight that the shelf states for loose goods; empty for packs
 * @param seen the day the price was seen
 * @param note free text; the demo's invented prices say so here
 */
public record Pack(
        Food food,
        String shop,
        String label,
        Contents contents,
        Money price,
        Optional<PriceTag> loose,
        LocalDate seen,
        String note) {
    /** Common practice: shop prices are looked at again at least twice a year, and they move with the seasons. */
    public static final int STALE_AFTER_DAYS = 180;

    /**
     * A single pack.
     *
     * @param grams as purchased, refuse included
     */
    public Pack(Food food, String shop, String label, BigDecimal grams, Money price, LocalDate seen, String note) {
        this(food, shop, label, Contents.of(grams), price, Optional.empty(), seen, note);
    }

    /** Goods sold loose: this pack's grams and price are what the shelf states, and any whole number of steps can be bought. */
    public Pack looseBy(BigDecimal stepGrams) {
        PriceTag tag = tag();
        return new Pack(food, shop, label, Contents.of(stepGrams), tag.of(stepGrams), Optional.of(tag), seen, note);
    }

    public boolean isLoose() {
        return loose.isPresent();
    }

    /** As purchased, refuse included; drained where it is drained. */
    public BigDecimal grams() {
        return contents.grams();
    }

    /** Price and weight as the shelf states them. */
    public PriceTag tag() {
        return loose.orElseGet(() -> new PriceTag(grams(), price));
    }

    /** Whether the price was seen more than {@link #STALE_AFTER_DAYS} days before this day. */
    public boolean isStaleOn(LocalDate day) {
        return seen.isBefore(day.minusDays(STALE_AFTER_DAYS));
    }
}
