package batchwright.person;

import java.util.OptionalInt;

/**
 * How large a container of an eater may be; empty means the default.
 *
 * @param mostG of what is packed, cooked [g]
 * @param mostMl of the room it takes [ml]
 */
public record Box(OptionalInt mostG, OptionalInt mostMl) {
    /** No profile may ask for more in a container than this [g or ml]: it is no meal, and cools too slowly. Our choice. */
    public static final int HIGHEST = 2000;

    public static final Box USUAL = new Box(OptionalInt.empty(), OptionalInt.empty());
}
