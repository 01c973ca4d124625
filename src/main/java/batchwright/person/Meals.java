package batchwright.person;

import java.util.OptionalInt;

/**
 * What meals an eater's containers are for, how often the same dish may come, and what snacks go together.
 *
 * @param leastBreakfasts at least so many containers a day are breakfast dishes
 * @param mostBreakfasts at most so many are; a dish of another kind is never a breakfast
 * @param sameDishADay most containers of one dish in a day, 1 to {@link #MOST_OF_A_DISH_A_DAY}
 * @param sameDishInAll most containers of one dish over all days; empty when there is no such limit
 * @param anySnacks whether snacks that do not go together, such as a spread without bread, may come on one day
 */
public record Meals(
        int leastBreakfasts, int mostBreakfasts, int sameDishADay, OptionalInt sameDishInAll, boolean anySnacks) {
    /** Nobody is served the same dish more often than this on one day. Our choice. */
    public static final int MOST_OF_A_DISH_A_DAY = 2;
    /** A day has one breakfast at most, and it need not be packed. */
    public static final Meals USUAL = new Meals(0, 1, MOST_OF_A_DISH_A_DAY, OptionalInt.empty(), false);

    public Meals {
        if (leastBreakfasts < 0 || leastBreakfasts > mostBreakfasts) {
            throw new IllegalArgumentException(
                    "breakfasts (" + leastBreakfasts + " to " + mostBreakfasts + ") must be from few to many.");
        }
    }

    public Meals withBreakfasts(int least, int most) {
        return new Meals(least, most, sameDishADay, sameDishInAll, anySnacks);
    }

    public Meals withSameDish(int aDay, OptionalInt inAll) {
        return new Meals(leastBreakfasts, mostBreakfasts, aDay, inAll, anySnacks);
    }

    public Meals withAnySnacks(boolean any) {
        return new Meals(leastBreakfasts, mostBreakfasts, sameDishADay, sameDishInAll, any);
    }
}
