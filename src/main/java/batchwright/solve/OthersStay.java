package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.Seat;
import batchwright.plan.Snack;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.rule.Amounts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Models in which the containers and snacks of most eaters are those of a plan.
 *
 * @param models without that
 * @param plan whose eaters stay as they are, with the same containers on each day as in the layouts asked for
 * @param free eaters of whom everything is open
 */
record OthersStay(LayoutModels models, DaysSolution plan, Set<Seat> free) implements LayoutSearch.DraftMaker {
    @Override
    public DaysDraft make(Layout layout) {
        DaysDraft draft = models.make(layout);
        draft.request().seats().stream().filter(seat -> !free.contains(seat)).forEach(seat -> {
            keepGrams(draft, seat);
            keepSnacks(draft, seat, Lookup.get(plan.snacks(), seat));
        });
        return draft;
    }

    @Override
    public Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs) {
        return Optional.empty();
    }

    private void keepGrams(DaysDraft draft, Seat seat) {
        for (Dish dish : Lookup.get(draft.layout().containers(), seat).keySet()) {
            for (Part part : dish.parts()) {
                Column before = plan.draft().stepsColumn(seat, dish, part);
                keep(draft, draft.stepsColumn(seat, dish, part), Math.rint(plan.values()[before.index()]));
            }
        }
    }

    /** Makes the snacks of each day stay; where the days of an eater are alike, some such day has them. */
    static void keepSnacks(DaysDraft draft, Seat seat, Map<Integer, List<Snack>> snacks) {
        for (LikeDays like : Layout.grouped(draft.layout().days(seat))) {
            List<List<Snack>> days = new ArrayList<>();
            like.days().forEach(day -> days.add(Lookup.get(snacks, day)));
            // The order of like days is free and fixed by the model.
            days.sort(Comparator.comparingDouble(OthersStay::kcal).reversed());
            for (int k = 0; k < days.size(); k++) {
                keep(draft, seat, like.days().get(k), days.get(k));
            }
        }
    }

    private static void keep(DaysDraft draft, Seat seat, int day, List<Snack> snacks) {
        LikeDays single = draft.groups(seat).stream()
                .filter(group -> group.days().contains(day))
                .findFirst()
                .orElseThrow();
        draft.menu()
                .snacks(seat)
                .forEach(measure -> keep(
                        draft,
                        draft.snackColumn(seat, measure, single),
                        snacks.stream()
                                .filter(snack -> snack.measure().equals(measure))
                                .mapToInt(Snack::count)
                                .sum()));
    }

    private static double kcal(List<Snack> snacks) {
        return snacks.stream()
                .mapToDouble(snack -> snack.count() * Amounts.inMeasure(snack.measure(), Nutrient.ENERGY))
                .sum();
    }

    /** Makes a column stay at a value. */
    static void keep(DaysDraft draft, Column column, double value) {
        draft.model().row("stays." + column.name(), Expression.of(column), value, value);
    }
}
