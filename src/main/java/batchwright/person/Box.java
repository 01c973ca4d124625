package batchwright.person;

import java.util.OptionalInt;

/**
 * How large a container of an eater may be, and how dense what is in it; empty means the default, which for density is no limit.
 *
 * @param mostG of what is packed, cooked [g]
 * @param mostMl of the room it takes [ml]
 * @param leastKcalPer100G of what is packed, cooked
 * @param mostKcalPer100G of what is packed, cooked
 */
public record Box(OptionalInt mostG, OptionalInt mostMl, OptionalInt leastKcalPer100G, OptionalInt mostKcalPer100G) {
    /** No profile may ask for more in a container than this [g or ml]: it is no meal, and cools too slowly. Our choice. */
    public static final int HIGHEST = 2000;

    /** Nothing that is eaten is denser: pure fat [kcal per 100 g]. */
    public static final int DENSEST = 900;

    public static final Box USUAL =
            new Box(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
}
