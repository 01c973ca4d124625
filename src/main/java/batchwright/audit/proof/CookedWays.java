package batchwright.audit.proof;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Variant;
import batchwright.person.Meals;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What may be cooked, in which ways, and how many containers of it anybody may get, as the files say it. */
final class CookedWays {
    private final PlanRequest request;
    private final Map<String, List<Way>> byDish = new LinkedHashMap<>();

    /**
     * A dish as it is cooked: as it is written, or with some of its swaps.
     *
     * @param name its id; of a variant, with its number behind
     * @param dish whose parts are as they are cooked
     */
    record Way(String name, Dish dish) {}

    /** @param among ids of dishes that may be cooked */
    CookedWays(PlanRequest request, Set<String> among) {
        this.request = request;
        for (Dish dish : request.kitchen().dishes().values()) {
            if (among.contains(dish.id()) && isForSomebody(request, dish)) {
                byDish.put(
                        dish.id(),
                        ways(dish).stream()
                                .filter(way -> isPossible(request, way))
                                .toList());
            }
        }
    }

    /** Whether somebody may be served the dish in some way. */
    static boolean isForSomebody(PlanRequest request, Dish dish) {
        return ways(dish).stream().anyMatch(way -> isPossible(request, way));
    }

    private static boolean isPossible(PlanRequest request, Way way) {
        return canBeHad(request.kitchen(), way) && request.seats().stream().anyMatch(seat -> isFor(seat, way));
    }

    private static List<Way> ways(Dish dish) {
        List<Way> ways = new ArrayList<>(List.of(new Way(dish.id(), dish)));
        for (Variant variant : Variant.of(dish)) {
            ways.add(new Way(dish.id() + "~" + ways.size(), variant.dish()));
        }
        return ways;
    }

    /** Whether each food that is never left out is sold or at home. */
    private static boolean canBeHad(Kitchen kitchen, Way way) {
        return way.dish().parts().stream()
                .filter(part -> !part.optional() && part.leastGrams() > 0)
                .flatMap(part -> part.mix().stream())
                .filter(ingredient -> ingredient.amount().signum() > 0)
                .allMatch(ingredient -> !kitchen.packsOf(ingredient.food()).isEmpty()
                        || kitchen.pantryGrams(ingredient.food()).signum() > 0);
    }

    static boolean isFor(Seat seat, Way way) {
        return seat.eater().wishes().allows(way.dish());
    }

    Set<String> dishes() {
        return byDish.keySet();
    }

    List<Way> of(String dish) {
        return byDish.getOrDefault(dish, List.of());
    }

    List<Way> all() {
        return byDish.values().stream().flatMap(List::stream).toList();
    }

    /** Those that the eater may be served. */
    List<Way> of(Seat seat) {
        return all().stream().filter(way -> isFor(seat, way)).toList();
    }

    /** Most containers of a dish that the eater may have on a day. */
    static int mostADay(Seat seat, Dish dish) {
        Wishes wishes = seat.eater().wishes();
        Meals meals = wishes.meals();
        int containers = wishes.containersADay();
        int forItsMeal = switch (dish.kind()) {
            case BREAKFAST -> meals.mostBreakfasts();
            case LUNCH -> meals.mostLunches(containers);
            case DINNER -> meals.mostDinners(containers);
            case MAIN -> containers;
        };
        return Math.min(Math.min(meals.sameDishADay(), containers), forItsMeal);
    }

    /** Most containers of a dish that the eater may have in all. */
    int most(Seat seat, Dish dish) {
        int days = dish.freezes() ? request.days() : Math.min(request.days(), dish.fridgeDays());
        return Math.min(
                days * mostADay(seat, dish),
                seat.eater().wishes().meals().sameDishInAll().orElse(Integer.MAX_VALUE));
    }
}
