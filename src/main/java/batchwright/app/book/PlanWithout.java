package batchwright.app.book;

import batchwright.answer.PlanAnswer;
import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.MakePlan;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.TypedSum;
import batchwright.app.Workspace;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptSession;
import batchwright.book.ShoppingSoFar;
import batchwright.plan.PlanRequest;
import batchwright.plan.Watch;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A kept plan from one of its cooking sessions on, without a food that the shop does not have. What was bought so far is at home by the
 * book, and its price is off the budget. The dishes stay when they can.
 */
public final class PlanWithout {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final MakePlan plans;
    private final Workspace workspace;
    private final KeptSession session;

    /** @param workspace on the day of shopping */
    public PlanWithout(MakePlan plans, Workspace workspace, KeptSession session) {
        this.plans = plans;
        this.workspace = workspace;
        this.session = session;
    }

    /**
     * @param food short name
     * @throws Refused when it cannot be asked
     * @throws batchwright.app.FailedAudit when the planner's plan is wrong
     */
    public PlanAnswer answer(String food, Watch watch) {
        KeptPlan plan = session.plan();
        List<String> dishes = plan.batches().stream()
                .filter(batch -> batch.day() >= session.day())
                .map(KeptBatch::dish)
                .distinct()
                .toList();
        PlanAnswer same = answer(new DishesWanted(dishes, List.of(), List.of(food), List.of()), dishes.size(), watch);
        return same.plan().isPresent() || watch.stop()
                ? same
                : answer(new DishesWanted(List.of(), List.of(), List.of(food), List.of()), dishes.size(), watch);
    }

    private PlanAnswer answer(DishesWanted dishes, int number, Watch watch) {
        KeptPlan plan = session.plan();
        var question = new PlanQuestion(
                plan.eatersDays().stream().map(EatersDay::eater).distinct().toList(),
                plan.days() - session.day() + 1,
                budget(),
                new CookingWanted(
                        dishes,
                        DishNumber.atMost(Math.max(number, PlanRequest.USUAL_MOST_DISHES)),
                        session.sessionsLeft(),
                        false,
                        false),
                List.of(),
                new PlanQuestion.HowLong(PATIENCE),
                InsightWanted.NONE);
        return plans.answer(workspace.quietly().on(session.date()), question, watch, request -> {});
    }

    private Optional<TypedSum> budget() {
        KeptPlan plan = session.plan();
        if (plan.kept().budgetMinor().isEmpty()) {
            return Optional.empty();
        }
        BigDecimal all = BigDecimal.valueOf(
                plan.kept().budgetMinor().getAsLong(), workspace.foods().currency().digits());
        BigDecimal paid = ShoppingSoFar.of(plan, workspace.book()).paid();
        return Optional.of(new TypedSum(all.subtract(paid).max(BigDecimal.ZERO)));
    }
}
