package batchwright.solve;

/** How much of a set of dishes is searched. */
enum Depth {
    /** Plans with the same containers and snacks on every day: soon found, seldom the cheapest. */
    EVERY_DAY_ALIKE,
    /** All container counts and all layouts, to the end. */
    THOROUGH
}
