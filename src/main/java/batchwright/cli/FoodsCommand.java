package batchwright.cli;

import batchwright.app.FindFoods;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.report.FoodsJson;
import batchwright.report.FoodsText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** foods [WORDS...] */
@Command(
        name = "foods",
        header = "Search the foods and compare prices per kcal and per g protein.",
        customSynopsis = "foods [WORDS...] [OPTIONS]",
        footer = {
            "  java -jar target/batchwright.jar foods yogurt greek",
            "  java -jar target/batchwright.jar foods rolled_oats"
        })
final class FoodsCommand implements Callable<Integer> {
    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "WORDS",
            description =
                    "Beginnings of words, in any order; a food's short name shows all about it; without words, all foods.")
    private List<String> words = new ArrayList<>();

    @Override
    public Integer call() {
        Kitchen kitchen = program.workspace().kitchen();
        var find = new FindFoods(kitchen);
        Optional<Food> exactly = find.exactly(words);
        List<Food> foods = exactly.map(List::of).orElseGet(() -> find.matching(words));
        if (program.json) {
            return program.answer(FoodsJson.of(kitchen, foods));
        }
        return program.answer(exactly.map(food -> FoodsText.one(kitchen, food))
                .orElseGet(() -> FoodsText.table(kitchen, foods, says(find, foods))));
    }

    private String says(FindFoods find, List<Food> foods) {
        String asked = String.join(" ", words);
        if (foods.isEmpty()) {
            return "No food has the words \"" + asked + "\"."
                    + find.nearest(words).map(id -> " Nearest: " + id + ".").orElse(" \"foods\" lists them all.");
        }
        String count = foods.size() == 1 ? "1 food" : foods.size() + " foods";
        return count + (words.isEmpty() ? "" : " for \"" + asked + "\"")
                + "; prices of the pack that is cheapest per edible gram.";
    }
}
