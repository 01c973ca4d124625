package batchwright.cli;

import batchwright.answer.FilledDish;
import batchwright.app.FillContainers;
import batchwright.app.FindDish;
import batchwright.app.Refused;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.DishAnswer;
import batchwright.report.dishes.DishesJson;
import batchwright.report.dishes.DishesText;
import batchwright.report.dishes.FilledDishJson;
import batchwright.report.dishes.FilledDishText;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** dishes [DISH] */
@Command(
        name = "dishes",
        header = "The dishes, one in full, or containers of one filled as you ask.",
        customSynopsis = {"dishes [DISH] [OPTIONS]", "dishes DISH [--containers N] [--kcal K] [--protein G] [OPTIONS]"},
        footer = {
            "  java -jar target/batchwright.jar dishes lentil_ragu",
            "  java -jar target/batchwright.jar dishes lentil_ragu --kcal 700 --protein 40"
        })
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

    @Mixin
    private FillOptions fill = new FillOptions();

    @Override
    public Integer call() {
        if (dishes.size() > 1) {
            throw Refused.because("more than one dish is named", "Name one dish, or none to list them all.");
        }
        if (fill.any()) {
            return containers();
        }
        Kitchen kitchen = program.workspace().kitchen();
        if (dishes.isEmpty()) {
            return program.answer(
                    program.json ? DishesJson.of(kitchen, kitchen.allDishes()) : DishesText.all(kitchen));
        }
        Dish dish = FindDish.answer(kitchen, dishes.get(0));
        return program.answer(program.json ? DishesJson.of(kitchen, List.of(dish)) : DishesText.one(kitchen, dish));
    }

    private int containers() {
        if (dishes.isEmpty()) {
            throw Refused.because("no dish is named", "Name the dish to fill: dishes lentil_ragu --kcal 700.");
        }
        FilledDish filled = new FillContainers().answer(program.workspace(), fill.question(dishes.get(0)));
        return program.answer(
                program.json ? FilledDishJson.of(filled) : FilledDishText.of(filled, program.commands()),
                exit(filled.answer().status()));
    }

    private static ExitCode exit(DishAnswer.Status status) {
        return switch (status) {
            case FILLED -> ExitCode.DONE;
            case NOT_POSSIBLE -> ExitCode.NO_PLAN;
            case NOT_PROVEN -> ExitCode.NOT_PROVEN;
        };
    }
}
