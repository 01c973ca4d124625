package batchwright.app;

import batchwright.answer.FilledDish;
import batchwright.audit.AuditReport;
import batchwright.audit.DishAudit;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.plan.DishAnswer;
import batchwright.plan.DishPlanner;
import batchwright.plan.DishRequest;
import batchwright.plan.Plan;
import batchwright.solve.dish.DishSolver;
import batchwright.text.NearestName;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What goes into each container of one dish. An answer is shown only when the audit has worked out all of it again. */
public final class FillContainers {
    /** Home dishes take a small part of a second; this is for a dish with very many parts. */
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final DishPlanner planner;

    public FillContainers() {
        this(new DishSolver());
    }

    public FillContainers(DishPlanner planner) {
        this.planner = planner;
    }

    /**
     * @throws Refused when there is no such dish or part, or a file has an error
     * @throws FailedAudit when the answer is wrong
     */
    public FilledDish answer(Workspace workspace, DishQuestion question) {
        Kitchen kitchen = GoToShops.onOneDay(workspace.kitchen());
        Dish dish = FindDish.answer(kitchen, question.dish());
        Set<String> with = parts(dish, question.with());
        Set<String> without = parts(dish, question.without());
        with.stream().filter(without::contains).findFirst().ifPresent(part -> {
            throw Refused.because(part + " is both to be in and to be left out", "Name it once.");
        });
        var request = new DishRequest(
                kitchen,
                dish,
                question.containers(),
                question.wish().withParts(with, without),
                question.pantry(),
                question.budget().map(sum -> sum.in(kitchen.currency())),
                PATIENCE);
        DishAnswer answer = planner.fill(request);
        return new FilledDish(request, answer, answer.plan().map(plan -> audit(request, plan)));
    }

    private static Set<String> parts(Dish dish, List<String> named) {
        return named.stream().map(name -> part(dish, name)).collect(Collectors.toUnmodifiableSet());
    }

    /** The optional part of that name, whose blanks may be written as underscores. */
    private static String part(Dish dish, String named) {
        Optional<Part> part = dish.parts().stream()
                .filter(p -> oneWord(p.name()).equals(oneWord(named)))
                .findFirst();
        if (part.filter(Part::optional).isPresent()) {
            return part.get().name();
        }
        List<String> optional =
                dish.parts().stream().filter(Part::optional).map(Part::name).toList();
        String choice = optional.isEmpty()
                ? "None of its parts can be left out."
                : "Parts that can be left out: " + String.join(", ", optional) + ".";
        if (part.isPresent()) {
            throw Refused.because(named + " is in every container of " + dish.id(), choice);
        }
        throw Refused.because(
                dish.id() + " has no part called \"" + named + "\"",
                NearestName.of(named, optional).map(n -> "Nearest: " + n + ".").orElse(choice));
    }

    private static String oneWord(String name) {
        return name.toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    private static AuditReport audit(DishRequest request, Plan plan) {
        AuditReport report = DishAudit.of(request, plan);
        if (!report.passed()) {
            throw new FailedAudit(report);
        }
        return report;
    }
}
