package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.report.html.part.Series;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What an eater eats on a day, thing by thing, in whole units that add up to the day's totals.
 *
 * @param day as it is called: the first day of the whole plan is 1
 * @param whole of each nutrient, the amount of each thing
 */
record EatenDay(int day, List<Item> items, Map<Nutrient, List<Integer>> whole, Nutrients exact) {
    private static final List<Nutrient> SHOWN = List.of(
            Nutrient.ENERGY, Nutrient.PROTEIN, Nutrient.FAT, Nutrient.CARBOHYDRATE, Nutrient.FIBRE, Nutrient.FRUIT_VEG);

    /** These, and whatever else a limit on days is on. */
    static List<Nutrient> shown(DayTarget target) {
        return Stream.concat(SHOWN.stream(), target.shown().stream().map(Limit::measured))
                .distinct()
                .toList();
    }

    /**
     * Some of the day: containers of one dish, or a snack.
     *
     * @param count containers; 1 for a snack
     */
    record Item(Series series, int count, String label) {}

    static EatenDay of(Session session, EaterDays eater, Day day) {
        List<Item> items = new ArrayList<>();
        List<Nutrients> holds = new ArrayList<>();
        for (Serving serving : day.servings()) {
            Series series = Series.of(session, serving.dish());
            String frozen = serving.from() == Serving.Storage.FREEZER ? " (frozen)" : "";
            items.add(new Item(series, serving.count(), serving.count() + " × " + series.letter() + frozen));
            holds.add(session.fill(serving.dish(), eater.seat().eater())
                    .perContainer()
                    .times(BigDecimal.valueOf(serving.count())));
        }
        snacks(day.snacks(), Series.SNACK, items, holds);
        snacks(day.always(), Series.ALWAYS, items, holds);
        var whole = new EnumMap<Nutrient, List<Integer>>(Nutrient.class);
        for (Nutrient nutrient : shown(eater.seat().target())) {
            whole.put(
                    nutrient,
                    Apportioned.of(holds.stream().map(h -> h.get(nutrient)).toList()));
        }
        return new EatenDay(
                day.day() + session.firstDay() - 1,
                items,
                whole,
                session.totals(eater.seat().eater(), day));
    }

    private static void snacks(List<Snack> snacks, Series series, List<Item> items, List<Nutrients> holds) {
        for (Snack snack : snacks) {
            items.add(new Item(series, 1, Show.snack(snack)));
            holds.add(snack.nutrients());
        }
    }

    int amount(Nutrient nutrient, int item) {
        return whole.getOrDefault(nutrient, List.of()).get(item);
    }

    /** The sum of the things as they are printed, which is the day's total rounded half up. */
    int total(Nutrient nutrient) {
        return whole.getOrDefault(nutrient, List.of()).stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    /** ≥ where a food has no value, so that the true figure may be higher. */
    String mark(Nutrient nutrient) {
        return exact.isComplete(nutrient) ? "" : "≥ ";
    }

    String says() {
        return items.stream().map(Item::label).collect(Collectors.joining(" + "));
    }
}
