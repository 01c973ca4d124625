package batchwright.audit.proof;

import batchwright.audit.proof.CookedWays.Way;
import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Variety;

/** What is cooked: how many dishes, for how many containers, and how much of each part is in them. */
final class DishRows {
    private final TotalsOfDishes totals;
    private final ProofModel model;
    private final PlanRequest request;

    DishRows(TotalsOfDishes totals) {
        this.totals = totals;
        this.model = totals.model();
        this.request = totals.request();
    }

    void add() {
        howMany();
        for (String dish : totals.ways().dishes()) {
            if (totals.ways().of(dish).size() > 1) {
                oneWay(dish);
            }
            for (Way way : totals.ways().of(dish)) {
                batch(way);
            }
        }
        for (Seat seat : request.seats()) {
            for (Way way : totals.ways().of(seat)) {
                way.dish().parts().forEach(part -> range(seat, way, part));
            }
        }
    }

    private void howMany() {
        ProofModel.Sum all = model.new Sum();
        ProofModel.Sum again = model.new Sum();
        for (String dish : totals.ways().dishes()) {
            all.plus(model.column("cook." + dish), 1);
            if (request.variety()
                    .lastTime()
                    .contains(totals.ways().of(dish).get(0).dish())) {
                again.plus(model.column("cook." + dish), 1);
            }
        }
        all.atMost("most_dishes", request.mostDishes());
        all.atLeast("least_dishes", request.variety().leastDishes());
        again.atMost("last_time", Variety.MOST_AGAIN);
        for (Dish dish : request.mustCook()) {
            ProofModel.Sum asked = model.new Sum();
            if (totals.ways().dishes().contains(dish.id())) {
                asked.plus(model.column("cook." + dish.id()), 1);
            }
            asked.atLeast("asked_for." + dish.id(), 1);
        }
    }

    /** A batch is cooked in one way. */
    private void oneWay(String dish) {
        ProofModel.Sum ways = model.new Sum();
        totals.ways().of(dish).forEach(way -> ways.plus(totals.cookedAs(way), 1));
        ways.plus(model.column("cook." + dish), -1);
        ways.atLeast("cooked." + dish, 0);
        ways.atMost("one_way." + dish, 0);
    }

    /** None but what is cooked is served, and what is cooked fills at least two containers. */
    private void batch(Way way) {
        int cooked = totals.cookedAs(way);
        ProofModel.Sum all = model.new Sum();
        for (Seat seat : request.seats()) {
            int containers = totals.containersOf(way, seat);
            if (containers >= 0) {
                all.plus(containers, 1);
                model.new Sum()
                        .plus(containers, 1)
                        .plus(cooked, -totals.ways().most(seat, way.dish()))
                        .atMost("only_cooked." + way.name() + "." + seat.eater().id(), 0);
            }
        }
        all.plus(cooked, -PlanRequest.LEAST_CONTAINERS_OF_A_DISH).atLeast("batch." + way.name(), 0);
    }

    /** All containers are alike, so each holds no less and no more than the part's range; an optional part may be in none. */
    private void range(Seat seat, Way way, Part part) {
        String name = part.name() + "." + way.name() + "." + seat.eater().id();
        int grams = totals.gramsOf(part, way, seat);
        int containers = totals.containersOf(way, seat);
        long most = totals.ways().most(seat, way.dish());
        model.new Sum().plus(grams, 1).plus(containers, -part.mostGrams()).atMost("most." + name, 0);
        ProofModel.Sum aboveLeast = model.new Sum().plus(grams, 1).plus(containers, -part.leastGrams());
        if (!part.optional()) {
            aboveLeast.atLeast("least." + name, 0);
            return;
        }
        int in = totals.isIn(part, way, seat);
        model.new Sum().plus(grams, 1).plus(in, -most * part.mostGrams()).atMost("only_in." + name, 0);
        aboveLeast.plus(in, -most * part.leastGrams()).atLeast("least." + name, -most * part.leastGrams());
    }
}
