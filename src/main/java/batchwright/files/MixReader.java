package batchwright.files;

import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** The mix of a part, one food a line: {@code pasta: 100 g, boiled}. The method may be left out. */
final class MixReader {
    private static final Range GRAMS = Range.of("weight", "0.1", "100000", "g", "only the proportions count");
    private static final String EXAMPLE = "a weight and perhaps a method: 100 g, or 100 g, boiled";

    private final FoodNames foods;
    private final Yields yields;
    private final BiConsumer<Food, Span> used;
    private final Problems problems;

    /** @param used is told of every food and its place */
    MixReader(FoodNames foods, Yields yields, BiConsumer<Food, Span> used, Problems problems) {
        this.foods = foods;
        this.yields = yields;
        this.used = used;
        this.problems = problems;
    }

    List<Ingredient> read(Yaml.Group mix) {
        if (mix.entries().isEmpty()) {
            problems.error(mix.at(), "the mix is empty", "expected at least one food: pasta: 100 g, boiled");
        }
        var once = new Once(problems);
        var ingredients = new ArrayList<Ingredient>();
        for (Yaml.Entry entry : mix.entries()) {
            if (once.isNew(entry.key().text(), entry.key())) {
                ingredient(entry).ifPresent(ingredients::add);
            }
        }
        return ingredients;
    }

    private Optional<Ingredient> ingredient(Yaml.Entry entry) {
        Optional<Food> food = foods.find(entry.key());
        food.ifPresent(f -> used.accept(f, entry.key().at()));
        if (!(entry.value() instanceof Yaml.Text text)) {
            problems.error(entry.value().at(), "this is not a weight", "expected " + EXAMPLE);
            return Optional.empty();
        }
        Written written = text.written();
        int comma = written.text().indexOf(", ");
        String amount = comma < 0 ? written.text() : written.text().substring(0, comma);
        Optional<BigDecimal> grams = Measured.in(new Written(amount, written.at()), GRAMS, EXAMPLE, problems);
        if (food.isEmpty()) {
            return Optional.empty();
        }
        Optional<CookedYield> cooked = comma < 0
                ? Optional.empty()
                : yields.find(food.get(), new Written(written.text().substring(comma + 1), written.at()));
        return grams.map(g -> new Ingredient(food.get(), g, cooked));
    }
}
