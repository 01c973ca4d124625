package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.Cooking;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Session;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** Plans for one of many eaters at a time, each by the search for a single eater. Several threads may ask at once. */
final class ForOne {
    /** When nothing was found: so many times the work. */
    private static final int AGAIN = 10;

    /** More than the rounding of a sum of doubles. */
    private static final double SURE = 0.001;

    private final PlanRequest all;
    private final PlanRequest byWorth;
    private final PlanRequest bounding;
    private final long work;
    private final Watch watch;

    /**
     * @param all of all eaters, cooked once
     * @param work of each search, as {@link Watch#stop(long)} counts it
     */
    ForOne(PlanRequest all, long work, Watch watch) {
        this.all = all;
        this.work = work;
        this.watch = new Watch.StopOnly(watch);
        PlanRequest plain = all.withCooking(Cooking.ONCE).withBudget(Optional.empty());
        this.byWorth = plain.withKitchen(AsWritten.of(ByWorth.of(all.kitchen())))
                .withMostDishes(Math.min(all.mostDishes(), MealsOfOne.MOST_DISHES));
        this.bounding = plain.withKitchen(ByWorth.bounding(all.kitchen()));
    }

    PlanRequest all() {
        return all;
    }

    /** Good meals of some dishes, by worth; empty when none are found. */
    Optional<MealsOfOne> meals(Seat seat, Set<Dish> dishes) {
        return plan(byWorth, seat, dishes).map(MealsOfOne::of);
    }

    /** Good meals of some dishes where this is at home and sold. */
    Optional<Session> session(Seat seat, Set<Dish> dishes, Kitchen kitchen) {
        return plan(byWorth.withKitchen(AsWritten.of(kitchen)), seat, dishes);
    }

    private Optional<Session> plan(PlanRequest request, Seat seat, Set<Dish> dishes) {
        Map<String, Dish> some = new LinkedHashMap<>(request.kitchen().dishes());
        some.values().retainAll(dishes);
        PlanRequest mine =
                request.withSeats(List.of(seat)).withKitchen(request.kitchen().withDishes(some));
        return search(mine, work).or(() -> search(mine, work * AGAIN));
    }

    private Optional<Session> search(PlanRequest request, long most) {
        return BatchPlanner.untilWork(most).plan(request, watch).best().map(plan -> plan.first());
    }

    /** Their part of no plan for all is worth less, in tenths of the minor unit; empty when there is none. */
    OptionalLong bound(Seat seat) {
        return BatchPlanner.boundOfTotals(bounding.withSeats(List.of(seat)), work * AGAIN);
    }

    /** No plan for all costs less. What is at home saves no more than it is worth. */
    Money bound(List<Long> ofEach) {
        long tenths = ofEach.stream().mapToLong(Long::longValue).sum();
        double atHome = all.kitchen().pantry().keySet().stream()
                .mapToDouble(
                        food -> ByWorth.worth(all.kitchen(), food, all.kitchen().pantryGrams(food))
                                .doubleValue())
                .sum();
        double least = (double) tenths / ByWorth.TO_THE_MINOR_UNIT - atHome;
        return new Money((long) Math.max(0, Math.ceil(least - SURE)));
    }
}
