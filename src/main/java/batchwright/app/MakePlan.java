package batchwright.app;

import batchwright.answer.PlanAnswer;
import batchwright.answer.PlanAnswer.Status;
import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.explain.ClashFinder;
import batchwright.explain.Insight;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Seat;
import batchwright.plan.Watch;
import batchwright.report.plan.SessionsAnswer;
import batchwright.solve.BatchPlanner;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What to cook, eat and buy. A plan is shown only when the audit has worked out all of it again. */
public final class MakePlan {
    private final Planner planner;

    public MakePlan() {
        this(new BatchPlanner());
    }

    public MakePlan(Planner planner) {
        this.planner = new AuditedPlanner(planner);
    }

    /**
     * @param watch looks on while the plan is searched, and may end that
     * @param before told what is asked, before the search; not told when a caution stops planning
     * @throws Refused when there is no such eater, or a file has an error
     * @throws FailedAudit when the planner's plan is wrong
     */
    public PlanAnswer answer(Workspace workspace, PlanQuestion question, Watch watch, Consumer<PlanRequest> before) {
        Deadline deadline = Deadline.in(question.patience());
        Kitchen all = workspace.kitchen();
        List<Needs> needs = needs(workspace, all, question.eaters());
        if (stopped(needs)) {
            return answer(all, needs, question, Status.NO_PLAN, Proof.NONE, Optional.empty(), List.of());
        }
        PlanRequest request = request(all, needs, question);
        before.accept(request);
        watch.paidIn(all.currency());
        PlanResult result = planner.plan(request.withPatience(deadline.left()), watch);
        PlanAnswer answer = result.match(new PlanResult.Cases<>() {
            @Override
            public PlanAnswer planned(PlanResult.Planned planned) {
                Plan plan = planned.plan();
                return answer(
                        all,
                        needs,
                        question,
                        Status.PLANNED,
                        plan.proof(),
                        Optional.of(new Audited(plan, audit(request, plan))),
                        List.of());
            }

            @Override
            public PlanAnswer noPlan(PlanResult.NoPlan none) {
                List<Clash> clashes =
                        none.clashes().isEmpty() || request.budget().isPresent()
                                ? clashes(request, none.proof(), watch, deadline)
                                : none.clashes();
                return answer(all, needs, question, Status.NO_PLAN, none.proof(), Optional.empty(), clashes);
            }

            @Override
            public PlanAnswer gaveUp(PlanResult.GaveUp gaveUp) {
                Optional<Audited> best = gaveUp.best().map(plan -> new Audited(plan, audit(request, plan)));
                Proof proof = gaveUp.proof().stoppedBySomebody(watch.stop());
                return answer(all, needs, question, Status.NOT_PROVEN, proof, best, List.of());
            }
        });
        return answer.with(new FindInsight(planner, watch, request, needs)
                .find(question.insight(), answer.plan(), answer.proof()));
    }

    /**
     * The same with several cooking sessions.
     *
     * @throws Refused when there is no such eater, or a file has an error
     * @throws FailedAudit when the sessions are wrong
     */
    public SessionsAnswer answer(Workspace workspace, SessionsQuestion question, Watch watch) {
        return new MakeSessions(this, planner).answer(workspace, question, watch);
    }

    static List<Needs> needs(Workspace workspace, Kitchen kitchen, List<String> eaters) {
        return new Eaters(workspace, kitchen)
                .all(eaters).stream().map(NeedsCalculator::needsOf).toList();
    }

    /** Whether a caution stops planning for somebody. */
    static boolean stopped(List<Needs> needs) {
        return needs.stream().anyMatch(n -> n.stopsPlanning() || n.target().isEmpty());
    }

    /** @throws Refused when there is no such dish */
    static PlanRequest request(Kitchen kitchen, List<Needs> needs, PlanQuestion question) {
        return new PlanRequest(
                cookingOnly(question.onlyDishes(), kitchen),
                needs.stream()
                        .map(n -> new Seat(n.eater(), n.target().orElseThrow()))
                        .toList(),
                question.days(),
                question.budget().map(sum -> sum.in(kitchen.currency())),
                question.mostDishes(),
                question.patience());
    }

    /** None when somebody stops the search for them: what is half known would be said wrongly. */
    List<Clash> clashes(PlanRequest request, Proof proof, Watch watch, Deadline deadline) {
        var finder = new ClashFinder(new UntilStopped(planner, watch), deadline.left());
        List<Clash> clashes = finder.clashes(request, proof);
        return watch.stop() ? List.of() : clashes;
    }

    /** @throws Refused when there is no such dish, or when it cannot be cooked in this kitchen */
    private static Kitchen cookingOnly(List<String> ids, Kitchen kitchen) {
        var dishes = new LinkedHashMap<String, Dish>();
        if (ids.isEmpty()) {
            dishes.putAll(kitchen.dishes());
            dishes.values().removeIf(dish -> kitchen.equipment().obstacle(dish).isPresent());
            return dishes.size() == kitchen.dishes().size() ? kitchen : kitchen.withDishes(dishes);
        }
        ids.stream().map(id -> FindDish.answer(kitchen, id)).forEach(dish -> {
            kitchen.equipment().obstacle(dish).ifPresent(step -> {
                throw Refused.because(
                        dish.id() + " cannot be cooked in this kitchen: a step needs " + step.needs(),
                        "Enter what there is in foods/kitchen.yaml, or another way to do the step in the dish.");
            });
            dishes.put(dish.id(), dish);
        });
        return kitchen.withDishes(dishes);
    }

    private record Audited(Plan plan, AuditReport audit) {}

    private static AuditReport audit(PlanRequest request, Plan plan) {
        AuditReport report = Audit.of(request, plan);
        if (!report.passed()) {
            throw new FailedAudit(report);
        }
        return report;
    }

    private static PlanAnswer answer(
            Kitchen kitchen,
            List<Needs> needs,
            PlanQuestion question,
            Status status,
            Proof proof,
            Optional<Audited> plan,
            List<Clash> clashes) {
        return new PlanAnswer(
                kitchen,
                question.eaters(),
                needs,
                question.days(),
                question.budget().map(sum -> sum.in(kitchen.currency())),
                status,
                proof,
                plan.map(Audited::plan),
                plan.map(Audited::audit),
                clashes,
                Insight.NONE);
    }
}
