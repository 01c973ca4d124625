package batchwright.cli.book;

import batchwright.answer.EatenFirst;
import batchwright.answer.PlanAnswer;
import batchwright.answer.RestOfPlan;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.EatFirst;
import batchwright.app.book.KeepPlan;
import batchwright.app.book.PlanRest;
import batchwright.cli.Given;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** What a plan starts from, and whether it is kept. */
public final class StockOptions {
    @Option(
            names = "--keep",
            description = "Keep the plan in profiles/plans: today goes by it, and the book can say \"as planned\".")
    private boolean keep;

    @Option(
            names = "--leave-containers",
            description = "Plan as if no containers were left; otherwise they are eaten first, as whole days.")
    private boolean leave;

    @Option(
            names = "--rest",
            description =
                    "Plan the rest of the kept plan's days again, from today on, with the containers that are left.")
    private boolean rest;

    @Option(
            names = "--keep-containers",
            description =
                    "With --rest: what is left stays on the days it was planned for; otherwise it is dealt out anew.")
    private boolean keepContainers;

    @Option(
            names = "--guest",
            paramLabel = "DAY",
            split = ",",
            description = "With --rest: set a container aside for a guest on this day: a date, today or tomorrow.")
    private List<String> guests = new ArrayList<>();

    private Optional<KeepPlan> kept = Optional.empty();

    /** What is eaten before the plan begins. */
    public EatenFirst first(Workspace workspace, List<String> eaters, int days) {
        return leave ? EatenFirst.none(workspace.cookingDay()) : EatFirst.of(workspace, eaters, days);
    }

    /** Whether only the rest of a kept plan is asked for. */
    public boolean isRest() {
        if (!rest && (keepContainers || !guests.isEmpty())) {
            throw Refused.because(
                    "--keep-containers and --guest are about the rest of a kept plan", "Ask for that: --rest.");
        }
        if (rest && leave) {
            throw Refused.because(
                    "--rest plans with the containers that are left", "Leave out --leave-containers or --rest.");
        }
        return rest;
    }

    public RestOfPlan rest(Workspace workspace, List<String> eaters) {
        return PlanRest.of(
                workspace,
                eaters,
                keepContainers,
                guests.stream().map(day -> day(day, workspace.cookingDay())).toList());
    }

    private static LocalDate day(String given, LocalDate today) {
        return switch (given.strip().toLowerCase(Locale.ROOT)) {
            case "today" -> today;
            case "tomorrow" -> today.plusDays(1);
            default -> new Given("--guest", given.strip()).day();
        };
    }

    /** Before the search: whether the plan could be kept. */
    public void check(Workspace workspace) {
        if (keep) {
            var plans = new KeepPlan(workspace);
            plans.tryOut(workspace.cookingDay());
            kept = Optional.of(plans);
        }
    }

    /** @return where the plan was kept; empty when it was not */
    public Optional<String> write(PlanAnswer answer, Function<PlanAnswer, String> json) {
        return kept.filter(k -> answer.plan().isPresent())
                .map(k -> k.keep(answer.kitchen().cookingDay(), json.apply(answer)));
    }
}
