package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.Draft;
import batchwright.solve.rule.Menu;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan day by day, for one given layout of containers over days: what is left to decide are the grams in each container (in
 * steps of the scale), the snacks of each day and the packs. Everything a finished plan must keep is in here, exactly.
 */
final class DaysDraft implements Draft {
    private static final int RANK_KEPT = 0;
    private static final int RANK_PACKS = 1;
    private static final int RANK_STEPS = 2;
    private static final int RANK_SNACKS = 2;

    private final PlanRequest request;
    private final Menu menu;
    private final Layout layout;
    private final MipModel model = new MipModel();
    private final Map<Key, Column> steps = new LinkedHashMap<>();
    private final Map<Key, Column> kept = new LinkedHashMap<>();
    private final Map<SnackKey, Column> snacks = new LinkedHashMap<>();
    private final Packs packs;

    private record Key(Seat seat, Dish dish, String part) {}

    private record SnackKey(Seat seat, Measure measure, int day) {}

    DaysDraft(PlanRequest request, Menu menu, Layout layout) {
        this.request = request;
        this.menu = menu;
        this.layout = layout;
        for (Seat seat : request.seats()) {
            served(seat).forEach((dish, count) -> dish.parts().forEach(part -> part(seat, dish, part)));
            for (int day = 1; day <= request.days(); day++) {
                for (Measure measure : menu.snacks(seat)) {
                    int most =
                            Math.min(measure.snackMost(), seat.eater().wishes().snackMeasuresADay());
                    String name = "snack." + measure.food().id() + "." + measure.name() + "."
                            + seat.eater().id() + ".day" + day;
                    snacks.put(new SnackKey(seat, measure, day), model.column(name, 0, most, true, RANK_SNACKS));
                }
            }
        }
        packs = new Packs(request, menu, model, RANK_PACKS);
        request.seats().forEach(this::orderLikeDays);
    }

    private void part(Seat seat, Dish dish, Part part) {
        String at = part.name() + "." + dish.id() + "." + seat.eater().id();
        boolean allowed = menu.allows(seat, part);
        int most = allowed ? part.mostGrams() / part.stepGrams() : 0;
        int least = part.optional() ? 0 : part.leastGrams() / part.stepGrams();
        var key = new Key(seat, dish, part.name());
        steps.put(key, model.column("steps." + at, least, most, true, RANK_STEPS));
        if (part.optional()) {
            kept.put(key, model.column("keep." + at, 0, allowed ? 1 : 0, true, RANK_KEPT));
        }
    }

    /** Days with the same containers differ in their snacks only; the order of such days is free, so fix it. */
    private void orderLikeDays(Seat seat) {
        List<Map<Dish, Integer>> days = daysOf(seat);
        for (int day = 1; day < days.size(); day++) {
            if (days.get(day).equals(days.get(day - 1))) {
                var more = new Expression();
                for (Measure measure : menu.snacks(seat)) {
                    double kcal = Amounts.inMeasure(measure, Nutrient.ENERGY);
                    more.plus(snackColumn(seat, measure, day), kcal);
                    more.plus(snackColumn(seat, measure, day + 1), -kcal);
                }
                model.atLeast("order.day" + day + "." + seat.eater().id(), more, 0);
            }
        }
    }

    Layout layout() {
        return layout;
    }

    private Map<Dish, Integer> served(Seat seat) {
        return Lookup.get(layout.containers(), seat);
    }

    private List<Map<Dish, Integer>> daysOf(Seat seat) {
        return Lookup.get(layout.days(), seat);
    }

    Column snackColumn(Seat seat, Measure measure, int day) {
        return Lookup.get(snacks, new SnackKey(seat, measure, day));
    }

    Column stepsColumn(Seat seat, Dish dish, Part part) {
        return Lookup.get(steps, new Key(seat, dish, part.name()));
    }

    private int count(Seat seat, Dish dish) {
        return served(seat).getOrDefault(dish, 0);
    }

    @Override
    public PlanRequest request() {
        return request;
    }

    @Override
    public Menu menu() {
        return menu;
    }

    @Override
    public MipModel model() {
        return model;
    }

    @Override
    public Expression cooked(Dish dish) {
        boolean any = request.seats().stream().anyMatch(seat -> count(seat, dish) > 0);
        return Expression.of(any ? 1 : 0);
    }

    @Override
    public Expression containers(Seat seat, Dish dish) {
        return Expression.of(count(seat, dish));
    }

    @Override
    public int mostContainers(Seat seat, Dish dish) {
        return count(seat, dish);
    }

    @Override
    public Expression grams(Seat seat, Dish dish, Part part) {
        int count = count(seat, dish);
        return count == 0
                ? new Expression()
                : new Expression().plus(stepsColumn(seat, dish, part), (double) count * part.stepGrams());
    }

    @Override
    public Optional<Column> kept(Seat seat, Dish dish, Part part) {
        return Optional.ofNullable(kept.get(new Key(seat, dish, part.name())));
    }

    @Override
    public Expression snacks(Seat seat, Measure measure) {
        var sum = new Expression();
        for (int day = 1; day <= request.days(); day++) {
            sum.plus(snackColumn(seat, measure, day), 1);
        }
        return sum;
    }

    @Override
    public Column packs(Pack pack) {
        return packs.column(pack);
    }

    @Override
    public List<Span> spans(Seat seat) {
        List<Span> spans = new ArrayList<>();
        for (int day = 1; day <= request.days(); day++) {
            spans.add(new OneDay(seat, day));
        }
        return spans;
    }

    /** One day. */
    private final class OneDay implements Span {
        private final Seat seat;
        private final int day;

        OneDay(Seat seat, int day) {
            this.seat = seat;
            this.day = day;
        }

        @Override
        public String name() {
            return seat.eater().id() + ".day" + day;
        }

        @Override
        public int days() {
            return 1;
        }

        @Override
        public Expression intake(Nutrient nutrient) {
            var sum = Expression.of(Amounts.inAlways(seat, nutrient));
            daysOf(seat)
                    .get(day - 1)
                    .forEach((dish, today) -> sum.plus(
                            Amounts.inContainers(DaysDraft.this, seat, dish, nutrient),
                            (double) today / count(seat, dish)));
            return Intake.plusSnacks(sum, DaysDraft.this, seat, nutrient, this::snacks);
        }

        @Override
        public Expression snacks(Measure measure) {
            return Expression.of(snackColumn(seat, measure, day));
        }
    }
}
