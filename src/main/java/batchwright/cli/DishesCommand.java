package batchwright.cli;

import batchwright.answer.FilledDish;
import batchwright.app.FillContainers;
import batchwright.app.FindDish;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.newdish.DishDialogue;
import batchwright.cli.dishes.NewDishAsked;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.DishAnswer;
import batchwright.report.dishes.DishOrder;
import batchwright.report.dishes.DishesJson;
import batchwright.report.dishes.DishesTable;
import batchwright.report.dishes.DishesText;
import batchwright.report.dishes.FilledDishJson;
import batchwright.report.dishes.FilledDishText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
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

    @Option(
            names = "--sort",
            paramLabel = "WORD",
            description = "Of all dishes: by name, time, hands, needs, cost, kcal, protein or keeps.")
    private String sort = "name";

    @Option(names = "--new", description = "Make a dish of your own: asks what goes into a batch, and writes its file.")
    private boolean isNew;

    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "With --new: the answers, one a line, instead of the keyboard.")
    private @Nullable Path answers;

    @Mixin
    private FillOptions fill = new FillOptions();

    @Override
    public Integer call() {
        if (isNew || answers != null) {
            return newDish();
        }
        if (dishes.size() > 1) {
            throw Refused.because("more than one dish is named", "Name one dish, or none to list them all.");
        }
        if (fill.any()) {
            return containers();
        }
        Kitchen kitchen = program.workspace().kitchen();
        if (dishes.isEmpty()) {
            return program.answer(program.json ? DishesJson.all(kitchen, order()) : DishesTable.of(kitchen, order()));
        }
        Dish dish = FindDish.answer(kitchen, dishes.get(0));
        return program.answer(program.json ? DishesJson.of(kitchen, List.of(dish)) : DishesText.one(kitchen, dish));
    }

    private DishOrder order() {
        return DishOrder.of(sort)
                .orElseThrow(() -> Refused.because(
                        "dishes cannot be sorted by \"" + sort + "\"",
                        "Write one of "
                                + Arrays.stream(DishOrder.values())
                                        .map(DishOrder::word)
                                        .collect(Collectors.joining(", "))
                                + "."));
    }

    private int newDish() {
        if (!isNew || !dishes.isEmpty() || fill.any() || program.json) {
            throw Refused.because(
                    "a new dish is asked for together with something else",
                    "Write dishes --new alone, or with --answers.");
        }
        Workspace workspace = program.workspace();
        var asking = new Asking(typed(), program::complain);
        var dialogue = new DishDialogue(workspace, workspace.kitchen());
        try {
            new NewDishAsked(dialogue, asking::ask, asking::say).run();
            return ExitCode.DONE.code();
        } catch (Asking.Quit quit) {
            program.complain("\nEnded; nothing was written.\n");
            return ExitCode.INTERRUPTED.code();
        }
    }

    private Input typed() {
        if (answers == null) {
            return program.keyboard()
                    .orElseThrow(() -> Refused.because(
                            "there is nobody to ask",
                            "Run it at a terminal, or give the answers with --answers FILE."));
        }
        try {
            Iterator<String> lines =
                    Files.readAllLines(program.here().resolve(answers)).iterator();
            return () -> lines.hasNext() ? Optional.of(lines.next()) : Optional.empty();
        } catch (IOException unreadable) {
            throw Refused.because("\"" + answers + "\" cannot be read", "Name a file with an answer on each line.");
        }
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
