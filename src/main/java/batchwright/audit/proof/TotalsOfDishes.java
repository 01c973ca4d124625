package batchwright.audit.proof;

import batchwright.audit.proof.CookedWays.Way;
import batchwright.food.Dish;
import batchwright.food.Measure;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What every plan that cooks some dishes keeps, over all days together: containers, grams, snacks and packs. Each row follows from a rule
 * of the plan; some rules have none: what a single day must keep beyond the average, steps of the scale, minutes. So a plan costs at least
 * what these rows need. A rule that the audit takes for kept when it is missed by a millionth of a unit may be missed by that here.
 */
public final class TotalsOfDishes {
    /** What the audit lets pass. */
    static final BigDecimal TOLERANCE = new BigDecimal("0.000001");

    private final PlanRequest request;
    private final CookedWays ways;
    private final ProofModel model = new ProofModel();

    private TotalsOfDishes(PlanRequest request, Set<String> among) {
        this.request = request;
        this.ways = new CookedWays(request, among);
    }

    /**
     * The rows for all sets of dishes that have some dishes and none but others.
     *
     * @param with ids of dishes that are cooked
     * @param among ids of dishes that may be
     */
    public static ProofModel of(PlanRequest request, Set<String> with, Set<String> among) {
        var totals = new TotalsOfDishes(request, among);
        totals.columns(with);
        new EaterRows(totals).add();
        new DishRows(totals).add();
        new ShopRows(totals).add();
        return totals.model;
    }

    /** Ids of all dishes that may be served to anybody at the table. */
    public static Set<String> dishes(PlanRequest request) {
        Set<String> dishes = new LinkedHashSet<>();
        for (Dish dish : request.kitchen().dishes().values()) {
            if (CookedWays.isForSomebody(request, dish)) {
                dishes.add(dish.id());
            }
        }
        return dishes;
    }

    PlanRequest request() {
        return request;
    }

    CookedWays ways() {
        return ways;
    }

    ProofModel model() {
        return model;
    }

    private void columns(Set<String> with) {
        for (String dish : ways.dishes()) {
            model.column("cook." + dish, with.contains(dish) ? 1 : 0, 1, true, 0);
            if (ways.of(dish).size() > 1) {
                ways.of(dish).forEach(way -> model.column("as." + way.name(), 0, 1, true, 0));
            }
        }
        for (Seat seat : request.seats()) {
            for (Way way : ways.of(seat)) {
                int most = ways.most(seat, way.dish());
                model.column(containers(way, seat), 0, most, true, 0);
                for (Part part : way.dish().parts()) {
                    boolean allowed = seat.eater().wishes().allows(part);
                    model.column(grams(part, way, seat), 0, allowed ? (long) part.mostGrams() * most : 0, false, 0);
                    if (part.optional()) {
                        model.column(in(part, way, seat), 0, allowed ? 1 : 0, true, 0);
                    }
                }
            }
            for (Measure measure : snacks(seat)) {
                model.column(snack(measure, seat), 0, (long) mostADay(seat, measure) * request.days(), true, 0);
            }
        }
    }

    /** 1 when the batch is cooked so. */
    int cookedAs(Way way) {
        String dish = way.dish().id();
        return model.column(ways.of(dish).size() > 1 ? "as." + way.name() : "cook." + dish);
    }

    int containersOf(Way way, Seat seat) {
        return model.column(containers(way, seat));
    }

    int gramsOf(Part part, Way way, Seat seat) {
        return model.column(grams(part, way, seat));
    }

    int isIn(Part part, Way way, Seat seat) {
        return model.column(in(part, way, seat));
    }

    int snackOf(Measure measure, Seat seat) {
        return model.column(snack(measure, seat));
    }

    private static String containers(Way way, Seat seat) {
        return "containers." + way.name() + "." + seat.eater().id();
    }

    private static String grams(Part part, Way way, Seat seat) {
        return "grams." + part.name() + "." + way.name() + "." + seat.eater().id();
    }

    private static String in(Part part, Way way, Seat seat) {
        return "in." + part.name() + "." + way.name() + "." + seat.eater().id();
    }

    private static String snack(Measure measure, Seat seat) {
        return "snack." + measure.food().id() + "." + measure.name() + "."
                + seat.eater().id();
    }

    /** Measures that the files offer to the eater as snacks. */
    List<Measure> snacks(Seat seat) {
        List<Measure> offered = new ArrayList<>();
        request.kitchen()
                .measures()
                .values()
                .forEach(all -> all.stream()
                        .filter(measure ->
                                measure.snackMost() > 0 && seat.eater().wishes().offersAsSnack(measure.food()))
                        .forEach(offered::add));
        return offered;
    }

    static int mostADay(Seat seat, Measure measure) {
        return Math.min(measure.snackMost(), seat.eater().wishes().snackMeasuresADay());
    }
}
