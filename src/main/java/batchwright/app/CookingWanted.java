package batchwright.app;

import batchwright.plan.left.LeftContainers;

/**
 * What may be cooked, and how often.
 *
 * @param dishes which may, must and must not be cooked
 * @param number of dishes in each session
 * @param sessions how many cooking sessions, 1 to the number of days
 * @param vary whether no dish is cooked in two sessions in a row
 * @param shopOnce whether everything is bought before the first session, not before each
 * @param left containers from before that are eaten
 */
public record CookingWanted(
        DishesWanted dishes, DishNumber number, int sessions, boolean vary, boolean shopOnce, LeftContainers left) {
    public CookingWanted(DishesWanted dishes, DishNumber number, int sessions, boolean vary, boolean shopOnce) {
        this(dishes, number, sessions, vary, shopOnce, LeftContainers.NONE);
    }

    /** With these containers from before. */
    CookingWanted with(LeftContainers other) {
        return new CookingWanted(dishes, number, sessions, vary, shopOnce, other);
    }

    /** With a session on each day at most. */
    CookingWanted forDays(int days) {
        return new CookingWanted(dishes, number, Math.min(sessions, days), vary, shopOnce, left);
    }

    CookingWanted withDishes(DishesWanted other) {
        return new CookingWanted(other, number, sessions, vary, shopOnce, left);
    }

    /** In one session. */
    public CookingWanted(DishesWanted dishes, DishNumber number) {
        this(dishes, number, 1, false, false);
    }
}
