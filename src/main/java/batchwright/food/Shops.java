package batchwright.food;

import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Going to the shops, and how much is brought home.
 *
 * @param trip what it costs to go to a shop, each time and each shop: the fare, or what the way is worth
 * @param elsewhere packs of shops that nobody goes to this time, by food
 * @param reserve room to spare: of what is weighed into a dish so much more is at hand than is used, as a share of it
 */
public record Shops(Money trip, Map<Food, List<Pack>> elsewhere, BigDecimal reserve) {
    /** Every shop is gone to, and the way costs nothing. */
    public static final Shops FREE = new Shops(Money.ZERO, Map.of());

    public Shops {
        if (reserve.signum() < 0) {
            throw new IllegalArgumentException("reserve (" + reserve + ") must be at least 0.");
        }
        elsewhere = Collections.unmodifiableMap(new LinkedHashMap<>(elsewhere));
    }

    /** Nothing more is at hand than is used. */
    public Shops(Money trip, Map<Food, List<Pack>> elsewhere) {
        this(trip, elsewhere, BigDecimal.ZERO);
    }

    public Shops withTrip(Money other) {
        return new Shops(other, elsewhere, reserve);
    }

    public Shops withElsewhere(Map<Food, List<Pack>> other) {
        return new Shops(trip, other, reserve);
    }

    public Shops withReserve(BigDecimal other) {
        return new Shops(trip, elsewhere, other);
    }

    public boolean keepsReserve() {
        return reserve.signum() > 0;
    }

    /** How many grams are at hand for each that a part takes; of pieces, which nobody weighs, none more. */
    public BigDecimal atHand(Part part) {
        return part.pieces() ? BigDecimal.ONE : BigDecimal.ONE.add(reserve);
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
