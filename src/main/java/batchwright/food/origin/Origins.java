package batchwright.food.origin;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * The origins of one food.
 *
 * @param known whether anything was said of them; otherwise both sets are empty
 * @param certain it is made of these
 * @param doubtful it may be, by maker and label: written milk?
 */
public record Origins(boolean known, Set<Origin> certain, Set<Origin> doubtful) {
    public static final Origins UNKNOWN = new Origins(false, Set.of(), Set.of());
    /** Plants, salt, water: known, and none of these. */
    public static final Origins NONE = new Origins(true, Set.of(), Set.of());

    public Origins {
        certain = ordered(certain);
        doubtful = ordered(doubtful);
    }

    public static Origins of(Collection<Origin> certain, Collection<Origin> doubtful) {
        return new Origins(true, ordered(certain), ordered(doubtful));
    }

    private static Set<Origin> ordered(Collection<Origin> some) {
        var ordered = EnumSet.noneOf(Origin.class);
        ordered.addAll(some);
        return Collections.unmodifiableSet(ordered);
    }
}
