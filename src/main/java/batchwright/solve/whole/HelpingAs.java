package batchwright.solve.whole;

import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.solve.mip.Expression;
import batchwright.solve.rule.SwapRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * What of a {@link Helping} is made as a variant of the dish: of each part that a variant changes, the steps in each container and the grams
 * of each day; all of them when the dish is cooked as that variant, and nothing when it is not.
 */
final class HelpingAs {
    private final WholeDraft draft;
    private final Helping helping;
    private final Map<Key, Expression> inEach = new LinkedHashMap<>();
    private final Map<Key, Map<Integer, Expression>> onDays = new LinkedHashMap<>();

    private record Key(Variant variant, String part) {}

    HelpingAs(WholeDraft draft, Helping helping) {
        this.draft = draft;
        this.helping = helping;
        dish().parts().forEach(this::follow);
    }

    private Dish dish() {
        return helping.who().dish();
    }

    private void follow(Part part) {
        List<Variant> changing = draft.menu().variants(dish()).stream()
                .filter(variant -> variant.changes(part))
                .toList();
        changing.forEach(variant -> onDays.put(new Key(variant, part.name()), new LinkedHashMap<>()));
        double most = helping.stepsColumn(part).upper();
        String row = part.name() + "." + helping.who().name();
        List<Expression> each = columns("swapped." + row, most, changing);
        for (int k = 0; k < changing.size(); k++) {
            inEach.put(new Key(changing.get(k), part.name()), each.get(k));
        }
        SwapRule.follow(draft, row, Expression.of(helping.stepsColumn(part)), most, changing, each);
        for (int day = 1; day <= draft.request().days(); day++) {
            double mostOnDay =
                    most * part.stepGrams() * helping.servedColumns(day).size();
            List<Expression> today = columns("swapped_on." + row + ".day" + day, mostOnDay, changing);
            for (int k = 0; k < changing.size(); k++) {
                Objects.requireNonNull(onDays.get(new Key(changing.get(k), part.name())))
                        .put(day, today.get(k));
            }
            SwapRule.follow(draft, row + ".day" + day, helping.grams(part, day), mostOnDay, changing, today);
        }
    }

    private List<Expression> columns(String name, double most, List<Variant> variants) {
        return variants.stream()
                .map(variant -> Expression.of(
                        draft.model().column(name + "." + (variants.indexOf(variant) + 1), 0, most, false, 0)))
                .toList();
    }

    /** Grams of a part over all days, when the dish is cooked as the variant. */
    Expression grams(Variant variant, Part part) {
        var sum = new Expression();
        onDays.getOrDefault(new Key(variant, part.name()), Map.of()).values().forEach(day -> sum.plus(day, 1));
        return sum;
    }

    /** How much more a day has of something because of swaps. */
    Expression more(int day, ToDoubleFunction<Part> inGram) {
        var sum = new Expression();
        onDays.forEach((key, days) -> sum.plus(Objects.requireNonNull(days.get(day)), more(key, inGram)));
        return sum;
    }

    /** How much more each container has of it. */
    Expression moreInEach(ToDoubleFunction<Part> inGram) {
        var sum = new Expression();
        inEach.forEach(
                (key, steps) -> sum.plus(steps, more(key, inGram) * part(key).stepGrams()));
        return sum;
    }

    private double more(Key key, ToDoubleFunction<Part> inGram) {
        Part part = part(key);
        return inGram.applyAsDouble(key.variant().cooked(part)) - inGram.applyAsDouble(part);
    }

    private Part part(Key key) {
        return dish().parts().stream()
                .filter(part -> part.name().equals(key.part()))
                .findFirst()
                .orElseThrow();
    }
}
