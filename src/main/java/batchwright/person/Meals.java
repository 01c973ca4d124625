package batchwright.person;

import batchwright.food.Dish.Kind;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What meals an eater's containers are for, how often the same dish may come, and what snacks go together. A breakfast dish is for
 * breakfast, a lunch dish for lunch, a dinner dish for dinner, and a main dish for lunch or dinner.
 *
 * @param breakfasts of a day; when nobody said, at most one
 * @param lunches of a day; when nobody said, at most half of the containers, rounded up, or what the dinners leave
 * @param dinners of a day, as lunches
 * @param sameDishADay most containers of one dish in a day, 1 to {@link #MOST_OF_A_DISH_A_DAY}
 * @param sameDishInAll most containers of one dish over all days; empty when there is no such limit
 * @param anySnacks whether snacks that do not go together, such as a spread without bread, may come on one day
 */
public record Meals(
        TimesADay breakfasts,
        TimesADay lunches,
        TimesADay dinners,
        int sameDishADay,
        OptionalInt sameDishInAll,
        boolean anySnacks) {
    /** Nobody is served the same dish more often than this on one day. Our choice. */
    public static final int MOST_OF_A_DISH_A_DAY = 2;
    /** A day has one breakfast at most, and it need not be packed. */
    public static final Meals USUAL = new Meals(
            TimesADay.NOT_SAID,
            TimesADay.NOT_SAID,
            TimesADay.NOT_SAID,
            MOST_OF_A_DISH_A_DAY,
            OptionalInt.empty(),
            false);

    private static final Set<Kind> LUNCHES = Set.of(Kind.LUNCH, Kind.MAIN);
    private static final Set<Kind> DINNERS = Set.of(Kind.DINNER, Kind.MAIN);
    private static final Set<Kind> LUNCHES_AND_DINNERS = Set.of(Kind.LUNCH, Kind.DINNER, Kind.MAIN);

    public Meals withBreakfasts(TimesADay other) {
        return new Meals(other, lunches, dinners, sameDishADay, sameDishInAll, anySnacks);
    }

    public Meals withLunchesAndDinners(TimesADay ofLunch, TimesADay ofDinner) {
        return new Meals(breakfasts, ofLunch, ofDinner, sameDishADay, sameDishInAll, anySnacks);
    }

    public Meals withSameDish(int aDay, OptionalInt inAll) {
        return new Meals(breakfasts, lunches, dinners, aDay, inAll, anySnacks);
    }

    public Meals withAnySnacks(boolean any) {
        return new Meals(breakfasts, lunches, dinners, sameDishADay, sameDishInAll, any);
    }

    public int mostBreakfasts() {
        return breakfasts.most().orElse(Math.max(1, breakfasts.least()));
    }

    /** @param containers a day */
    public int mostLunches(int containers) {
        return most(lunches, dinners, containers);
    }

    /** @param containers a day */
    public int mostDinners(int containers) {
        return most(dinners, lunches, containers);
    }

    private static int most(TimesADay times, TimesADay other, int containers) {
        int half = (containers + 1) / 2;
        int rest = containers - other.most().orElse(half);
        return times.most().orElse(Math.max(Math.max(half, rest), times.least()));
    }

    /**
     * What a day's containers must keep so that each is for a meal that its dish is for: counted by kinds, which holds exactly when
     * the main dishes can be dealt out to lunches and dinners.
     *
     * @param containers a day
     */
    public List<KindsADay> kinds(int containers) {
        int lunch = mostLunches(containers);
        int dinner = mostDinners(containers);
        return List.of(
                new KindsADay("breakfasts", Set.of(Kind.BREAKFAST), breakfasts.least(), mostBreakfasts()),
                new KindsADay("lunches", Set.of(Kind.LUNCH), 0, lunch),
                new KindsADay("dinners", Set.of(Kind.DINNER), 0, dinner),
                new KindsADay("for_lunch", LUNCHES, lunches.least(), containers),
                new KindsADay("for_dinner", DINNERS, dinners.least(), containers),
                new KindsADay(
                        "lunches_and_dinners", LUNCHES_AND_DINNERS, lunches.least() + dinners.least(), lunch + dinner));
    }
}
