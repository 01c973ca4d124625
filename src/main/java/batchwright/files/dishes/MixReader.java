package batchwright.files.dishes;

import batchwright.files.foods.FoodNames;
import batchwright.files.foods.Yields;
import batchwright.files.page.Yaml;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * The mix of a part, one food a line: {@code pasta: 100 g, boiled}, {@code olive_oil: 2 tbsp}, {@code honey: 8 g, or sugar}. The method
 * and what may take the food's place may be left out.
 */
public final class MixReader {
    private final FoodNames foods;
    private final AmountGrammar amounts;
    private final Yields yields;
    private final BiConsumer<Food, Span> used;
    private final Problems problems;

    /** @param used is told of every food and its place */
    public MixReader(
            FoodNames foods, AmountGrammar amounts, Yields yields, BiConsumer<Food, Span> used, Problems problems) {
        this.foods = foods;
        this.amounts = amounts;
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
            problems.error(entry.value().at(), "this is not an amount", "expected " + AmountGrammar.EXAMPLE);
            return Optional.empty();
        }
        var line = InsteadGrammar.split(text.written());
        Written written = line.before();
        int comma = written.text().indexOf(", ");
        String before = comma < 0 ? written.text() : written.text().substring(0, comma);
        Optional<String> method =
                comma < 0 ? food.flatMap(f -> yields.methodAtEnd(f, written.text())) : Optional.empty();
        if (method.isPresent()) {
            commaMissing(written, method.get());
            return Optional.empty();
        }
        Optional<AmountGrammar.Amount> amount = amounts.read(food, new Written(before, written.at()));
        if (food.isEmpty()) {
            return Optional.empty();
        }
        Optional<Written> cookedHow = comma < 0
                ? Optional.empty()
                : Optional.of(new Written(written.text().substring(comma + 1), written.at()));
        Optional<CookedYield> cooked = cookedHow.flatMap(how -> yields.find(food.get(), how));
        var instead = new InsteadGrammar(foods, yields, problems);
        return amount.map(a -> new Ingredient(
                food.get(),
                a.grams(),
                cooked,
                a.measured(),
                instead.read(food.get(), a.grams(), cookedHow, line.instead())));
    }

    private void commaMissing(Written written, String method) {
        String amount = written.text()
                .substring(0, written.text().length() - method.length())
                .replaceFirst("[\\s,]+$", "");
        problems.error(
                written,
                "there is no comma and blank before %s".formatted(method),
                "expected %s, %s".formatted(amount, method));
    }
}
