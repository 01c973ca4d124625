package batchwright.food;

import batchwright.quantity.Money;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Going to the shops.
 *
 * @param trip what it costs to go to a shop, each time and each shop: the fare, or what the way is worth
 * @param elsewhere packs of shops that nobody goes to this time, by food
 */
public record Shops(Money trip, Map<Food, List<Pack>> elsewhere) {
    /** Every shop is gone to, and the way costs nothing. */
    public static final Shops FREE = new Shops(Money.ZERO, Map.of());

    public Shops {
        elsewhere = Collections.unmodifiableMap(new LinkedHashMap<>(elsewhere));
    }

    /** Whether it matters how many there are. */
    public boolean tripsCost() {
        return trip.minor() > 0;
    }

    /** What so many of them cost. */
    public Money trips(int howMany) {
        return trip.times(howMany);
    }
}
