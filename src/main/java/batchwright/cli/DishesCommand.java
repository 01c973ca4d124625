package batchwright.cli;

import batchwright.app.FindDish;
import batchwright.app.Refused;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.report.DishesJson;
import batchwright.report.DishesText;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** dishes [DISH] */
@Command(
        name = "dishes",
        header = "The dishes, or one in full: parts, containers, cost, steps.",
        customSynopsis = "dishes [DISH] [OPTIONS]",
        footer = {"  java -jar target/batchwright.jar dishes", "  java -jar target/batchwright.jar dishes lentil_ragu"})
final class DishesCommand implements Callable<Integer> {
    /** Set by the command line's parser before {@link #call()}. */
    @ParentCommand
    @SuppressWarnings("NullAway.Init")
    private Batchwright program;

    @Parameters(
            arity = "0..*",
            hideParamSyntax = true,
            paramLabel = "DISH",
            description = "Short name of a dish; without it, all dishes.")
    private List<String> dishes = new ArrayList<>();

    @Override
    public Integer call() {
        if (dishes.size() > 1) {
            throw Refused.because("more than one dish is named", "Name one dish, or none to list them all.");
        }
        Kitchen kitchen = program.workspace().kitchen();
        if (dishes.isEmpty()) {
            return program.answer(
                    program.json ? DishesJson.of(kitchen, kitchen.dishes().values()) : DishesText.all(kitchen));
        }
        Dish dish = FindDish.answer(kitchen, dishes.get(0));
        return program.answer(program.json ? DishesJson.of(kitchen, List.of(dish)) : DishesText.one(kitchen, dish));
    }
}
