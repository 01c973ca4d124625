package batchwright.cli.book;

import batchwright.answer.EatenFirst;
import batchwright.answer.PlanAnswer;
import batchwright.app.Workspace;
import batchwright.app.book.EatFirst;
import batchwright.app.book.KeepPlan;
import java.util.List;
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

    private Optional<KeepPlan> kept = Optional.empty();

    /** What is eaten before the plan begins. */
    public EatenFirst first(Workspace workspace, List<String> eaters, int days) {
        return leave ? EatenFirst.none(workspace.cookingDay()) : EatFirst.of(workspace, eaters, days);
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
