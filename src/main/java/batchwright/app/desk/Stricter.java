package batchwright.app.desk;

import batchwright.food.Kitchen;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.person.Avoided;
import batchwright.person.Eater;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;

/**
 * Whether every plan for one request is a plan for another, whatever it costs: then what no plan of the other costs less than, none of
 * this one does. Answers with no where it is not plain to see.
 */
final class Stricter {
    private final PlanRequest strict;
    private final PlanRequest other;

    private Stricter(PlanRequest strict, PlanRequest other) {
        this.strict = strict;
        this.other = other;
    }

    /** Budgets and patience do not count. */
    static boolean isAtLeastAs(PlanRequest strict, PlanRequest other) {
        return new Stricter(strict, other).holds();
    }

    private boolean holds() {
        return strict.days() == other.days()
                && strict.mostDishes() <= other.mostDishes()
                && strict.mustCook().containsAll(other.mustCook())
                && strict.cooking().withMustCook(other.mustCook()).equals(other.cooking())
                && isStricter(strict.kitchen(), other.kitchen())
                && areStricter();
    }

    private static boolean isStricter(Kitchen strict, Kitchen other) {
        return strict.cookingDay().equals(other.cookingDay())
                && strict.currency().equals(other.currency())
                && strict.equipment().equals(other.equipment())
                && other.dishes().keySet().containsAll(strict.dishes().keySet())
                && same(strict.packs(), other.packs())
                && same(strict.pantry(), other.pantry())
                && strict.shops().equals(other.shops());
    }

    private static boolean same(Object one, Object other) {
        return one.equals(other);
    }

    private boolean areStricter() {
        if (strict.seats().size() != other.seats().size()) {
            return false;
        }
        for (int k = 0; k < strict.seats().size(); k++) {
            if (!isStricter(strict.seats().get(k), other.seats().get(k))) {
                return false;
            }
        }
        return true;
    }

    private boolean isStricter(Seat mine, Seat theirs) {
        return mine.eater().id().equals(theirs.eater().id())
                && isStricter(mine.eater(), theirs.eater())
                && isStricter(mine.target(), theirs.target());
    }

    private boolean isStricter(Eater mine, Eater theirs) {
        Wishes strictly = mine.wishes();
        Wishes others = theirs.wishes();
        return strictly.containersADay() == others.containersADay()
                && strictly.always().equals(others.always())
                && strictly.meals().equals(others.meals())
                && strictly.snackMeasuresADay() <= others.snackMeasuresADay()
                && strictly.snackKindsADay() <= others.snackKindsADay()
                && others.snackFoods()
                        .map(all ->
                                strictly.snackFoods().filter(all::containsAll).isPresent())
                        .orElse(true)
                && avoidsAsMuch(strictly.avoided(), others.avoided());
    }

    /** Who shares a dish with an eater decides what may take a food's place in it: of several, all must avoid just the same. */
    private boolean avoidsAsMuch(Avoided mine, Avoided theirs) {
        return mine.equals(theirs)
                || (strict.seats().size() == 1
                        && mine.foods().containsAll(theirs.foods())
                        && mine.allergens().containsAll(theirs.allergens())
                        && mine.dishes().containsAll(theirs.dishes())
                        && mine.diets().containsAll(theirs.diets())
                        && theirs.checked().containsAll(mine.checked()));
    }

    private static boolean isStricter(DayTarget mine, DayTarget theirs) {
        return theirs.limits().stream().allMatch(limit -> limit.range().holds(range(mine, limit)));
    }

    private static Range range(DayTarget target, Limit limit) {
        return target.range(limit.scope(), limit.measured());
    }
}
