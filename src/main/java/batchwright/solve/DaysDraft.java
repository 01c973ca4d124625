package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.Menu;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A plan for one given layout of containers over days: what is left to decide are the grams in each container (in steps of the
 * scale), the snacks and the packs. Like days are taken together, and then only the sum of their snacks is decided here: how
 * those are dealt out to the single days is for {@link SnackDeal}.
 */
final class DaysDraft extends AbstractDraft {
    private static final int RANK = 0;
    /** Follows from the columns before. */
    private static final int AFTER_ALL = 1;

    private final Layout layout;
    private final boolean alike;
    private final Map<PartKey, Column> steps = new LinkedHashMap<>();
    private final Map<SnackKey, Column> snacks = new LinkedHashMap<>();

    private record SnackKey(Seat seat, Measure measure, LikeDays group) {}

    /** @param stop told of the work of making the model */
    DaysDraft(PlanRequest request, Menu menu, Layout layout, Stop stop) {
        this(request, menu, layout, stop, false);
    }

    /** Like days get the same snacks too: quickly solved, not always the cheapest. */
    static DaysDraft sameSnacks(PlanRequest request, Menu menu, Layout layout, Stop stop) {
        return new DaysDraft(request, menu, layout, stop, true);
    }

    /** Any plan with at most so many of each pack, given in the order of the menu; complete with all rules. */
    static DaysDraft withPacks(PlanRequest request, Menu menu, Layout layout, Stop stop, List<Integer> counts) {
        Set<Food> atHand = new HashSet<>(request.kitchen().pantry().keySet());
        atHand.removeIf(food -> request.lastingGrams(food).signum() == 0);
        for (int k = 0; k < counts.size(); k++) {
            if (counts.get(k) > 0) {
                atHand.add(menu.packs().get(k).food());
            }
        }
        DaysDraft draft =
                Aim.ANY_PLAN.complete(new DaysDraft(request, menu.withSnacksOf(atHand::contains), layout, stop));
        for (int k = 0; k < counts.size(); k++) {
            Column column = draft.packs(menu.packs().get(k));
            draft.model().row("packs." + column.name(), Expression.of(column), counts.get(k), counts.get(k));
        }
        return draft;
    }

    private DaysDraft(PlanRequest request, Menu menu, Layout layout, Stop stop, boolean alike) {
        super(request, menu, stop);
        this.alike = alike;
        this.layout = layout;
        for (Seat seat : request.seats()) {
            served(seat)
                    .forEach((dish, count) -> dish.parts().forEach(part -> part(PartKey.of(seat, dish, part), part)));
            for (LikeDays group : groups(seat)) {
                menu.snacks(seat).forEach(measure -> snack(seat, measure, group));
            }
        }
        addVariants(RANK);
        addPacks(RANK);
        request.seats().forEach(this::orderLikeDays);
    }

    private void snack(Seat seat, Measure measure, LikeDays group) {
        int aDay = Math.min(measure.snackMost(), seat.eater().wishes().snackMeasuresADay());
        String name = "snack." + measure.food().id() + "." + measure.name() + "." + named(seat, group);
        double most = (double) aDay * group.days().size() / daysOfOne(group);
        snacks.put(new SnackKey(seat, measure, group), model().column(name, 0, most, true, RANK));
    }

    /** Groups with the same containers differ in their snacks only; the order of such days is free, so it is fixed. */
    private void orderLikeDays(Seat seat) {
        List<LikeDays> groups = groups(seat);
        for (int g = 1; g < groups.size(); g++) {
            if (groups.get(g).isLike(groups.get(g - 1))) {
                var more = new Expression();
                for (Measure measure : menu().snacks(seat)) {
                    double kcal = Amounts.inMeasure(measure, Nutrient.ENERGY);
                    more.plus(snackColumn(seat, measure, groups.get(g - 1)), kcal);
                    more.plus(snackColumn(seat, measure, groups.get(g)), -kcal);
                }
                model().atLeast("order." + named(seat, groups.get(g)), more, 0);
            }
        }
    }

    private static String named(Seat seat, LikeDays group) {
        return seat.eater().id() + ".day" + group.days().get(0);
    }

    private void part(PartKey key, Part part) {
        int most = menu().allows(key.seat(), part) ? part.mostGrams() / part.stepGrams() : 0;
        int least = part.optional() ? 0 : part.leastGrams() / part.stepGrams();
        steps.put(key, model().column("steps." + key.name(), least, most, true, RANK));
        addKept(key, part, RANK);
    }

    @Override
    Expression gramsAs(String name, Seat seat, Dish dish, Part part) {
        int most = part.mostGrams() / part.stepGrams();
        return new Expression()
                .plus(model().column(name, 0, most, true, AFTER_ALL), (double) count(seat, dish) * part.stepGrams());
    }

    Layout layout() {
        return layout;
    }

    private Map<Dish, Integer> served(Seat seat) {
        return Lookup.get(layout.containers(), seat);
    }

    List<LikeDays> groups(Seat seat) {
        return Lookup.get(layout.groups(), seat);
    }

    /** How many days one in a snack's column stands for. */
    private int daysOfOne(LikeDays group) {
        return alike ? group.days().size() : 1;
    }

    /** How many of a measure the days of a group have together. */
    int snackCount(Seat seat, Measure measure, LikeDays group, double[] x) {
        return (int) Math.rint(x[snackColumn(seat, measure, group).index()]) * daysOfOne(group);
    }

    Column snackColumn(Seat seat, Measure measure, LikeDays group) {
        return Lookup.get(snacks, new SnackKey(seat, measure, group));
    }

    Column stepsColumn(Seat seat, Dish dish, Part part) {
        return Lookup.get(steps, PartKey.of(seat, dish, part));
    }

    private int count(Seat seat, Dish dish) {
        return served(seat).getOrDefault(dish, 0);
    }

    @Override
    public int rank() {
        return RANK;
    }

    @Override
    public boolean onlyBounds() {
        return false;
    }

    @Override
    public Expression cooked(Dish dish) {
        boolean any = request().seats().stream().anyMatch(seat -> count(seat, dish) > 0);
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
    public Expression snacks(Seat seat, Measure measure) {
        var sum = new Expression();
        groups(seat).forEach(group -> sum.plus(snackColumn(seat, measure, group), daysOfOne(group)));
        return sum;
    }

    @Override
    public List<Span> spans(Seat seat) {
        return groups(seat).stream()
                .<Span>map(group -> new GroupSpan(seat, group))
                .toList();
    }

    /** What one day of the group takes in from containers and from what is always eaten. */
    Expression withoutSnacks(Seat seat, LikeDays group, Nutrient nutrient) {
        var sum = Expression.of(Amounts.inAlways(seat, nutrient));
        group.servings()
                .forEach((dish, today) ->
                        sum.plus(Amounts.inContainers(this, seat, dish, nutrient), (double) today / count(seat, dish)));
        return sum;
    }

    /** Like days, taken together. */
    private final class GroupSpan implements Span {
        private final Seat seat;
        private final LikeDays group;

        GroupSpan(Seat seat, LikeDays group) {
            this.seat = seat;
            this.group = group;
        }

        @Override
        public String name() {
            return named(seat, group);
        }

        @Override
        public int days() {
            return group.days().size() / daysOfOne(group);
        }

        @Override
        public Expression intake(Nutrient nutrient) {
            var sum = new Expression().plus(withoutSnacks(seat, group, nutrient), days());
            for (Measure measure : menu().snacks(seat)) {
                sum.plus(snacks(measure), Amounts.inMeasure(measure, nutrient));
            }
            return sum;
        }

        @Override
        public Expression snacks(Measure measure) {
            return Expression.of(snackColumn(seat, measure, group));
        }
    }
}
