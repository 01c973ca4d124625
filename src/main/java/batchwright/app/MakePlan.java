package batchwright.app;

import batchwright.answer.Asked;
import batchwright.answer.AuditedPlan;
import batchwright.answer.PlanAnswer;
import batchwright.answer.PlanAnswer.Status;
import batchwright.answer.Stretch;
import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.explain.ClashFinder;
import batchwright.explain.cost.Insight;
import batchwright.food.Kitchen;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.person.Eater;
import batchwright.plan.Clashes;
import batchwright.plan.Cooking;
import batchwright.plan.LargestBox;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Seat;
import batchwright.plan.Variety;
import batchwright.plan.Watch;
import batchwright.solve.BatchPlanner;
import batchwright.solve.session.SessionsPlanner;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What to cook, eat and buy. A plan is shown only when the audit has worked out all of it again. */
public final class MakePlan {
    private final Planner planner;
    private final boolean explains;

    public MakePlan() {
        this(new BatchPlanner());
    }

    /** @param planner of one cooking session */
    public MakePlan(Planner planner) {
        this(planner, true);
    }

    private MakePlan(Planner planner, boolean explains) {
        this.planner = new SessionsPlanner(new AuditedPlanner(new DoneInTime(planner)));
        this.explains = explains;
    }

    /**
     * Does not look for reasons when there is no plan, which may take as long as the search.
     *
     * @param planner of one cooking session
     */
    public static MakePlan withoutReasons(Planner planner) {
        return new MakePlan(planner, false);
    }

    /**
     * What a plan is made from, as far as it is read from files.
     *
     * @param kitchen as far as its shops are gone to
     * @param eaters at the table, in the order of the question
     */
    public record Table(Kitchen kitchen, List<Eater> eaters) {
        public Table {
            eaters = List.copyOf(eaters);
        }

        /** @throws Refused when there is no such eater or shop, or a file has an error */
        public static Table of(Workspace workspace, PlanQuestion question) {
            Kitchen only = GoToShops.only(workspace.kitchen(), question.shops());
            Kitchen kitchen = question.cooking().shopOnce() ? GoToShops.onOneDay(only) : only;
            return new Table(kitchen, new Eaters(workspace, kitchen).all(question.eaters()));
        }

        List<Needs> needs() {
            return eaters.stream().map(NeedsCalculator::needsOf).toList();
        }

        public Table withEaters(List<Eater> others) {
            return new Table(kitchen, others);
        }
    }

    /**
     * @param watch looks on while the plan is searched, and may end the search
     * @param before told what is asked, before the search; not told when a caution stops planning
     * @throws Refused when there is no such eater, or a file has an error
     * @throws FailedAudit when the planner's plan is wrong
     */
    public PlanAnswer answer(Workspace workspace, PlanQuestion question, Watch watch, Consumer<PlanRequest> before) {
        Deadline deadline = Deadline.in(question.howLong().patience());
        return answer(Table.of(workspace, question), question, watch, before, deadline);
    }

    /**
     * The same, of what was read before.
     *
     * @param table of this question
     */
    public PlanAnswer answer(Table table, PlanQuestion question, Watch watch, Consumer<PlanRequest> before) {
        return answer(
                table, question, watch, before, Deadline.in(question.howLong().patience()));
    }

    private PlanAnswer answer(
            Table table, PlanQuestion question, Watch watch, Consumer<PlanRequest> before, Deadline deadline) {
        Asked asked = asked(table.kitchen(), table.needs(), question);
        if (stopped(asked.needs())) {
            return answer(asked, Status.NO_PLAN, Proof.NONE);
        }
        PlanRequest request = request(asked, question);
        before.accept(request);
        var untilClose = new UntilClose(watch, question.howLong().within());
        untilClose.paidIn(table.kitchen().currency());
        PlanResult result = planner.plan(request.withPatience(deadline.left()), untilClose);
        PlanAnswer answer = result.match(new PlanResult.Cases<>() {
            @Override
            public PlanAnswer planned(PlanResult.Planned planned) {
                return found(asked, Status.PLANNED, planned.proof(), request, planned.plan());
            }

            @Override
            public PlanAnswer noPlan(PlanResult.NoPlan none) {
                Clashes clashes = explains
                                && (none.clashes().isEmpty() || request.budget().isPresent())
                        ? clashes(request, none, watch, deadline)
                        : Clashes.of(none.clashes());
                return new PlanAnswer(
                        asked,
                        Status.NO_PLAN,
                        none.proof(),
                        Optional.empty(),
                        clashes,
                        none.stuck().map(MakePlan::stretch),
                        Insight.NONE);
            }

            @Override
            public PlanAnswer gaveUp(PlanResult.GaveUp gaveUp) {
                Proof ended = gaveUp.proof();
                Proof proof = ended.stoppedBySomebody(watch.stop())
                        .closeEnough(untilClose.isClose(ended.cost(), ended.lowerBound()));
                return gaveUp.best()
                        .map(plan -> found(asked, Status.NOT_PROVEN, proof, request, plan))
                        .or(() -> gaveUp.overBudget()
                                .map(plan -> found(
                                        asked, Status.NOT_PROVEN, proof, request.withBudget(Optional.empty()), plan)))
                        .orElseGet(() -> new PlanAnswer(
                                asked,
                                Status.NOT_PROVEN,
                                proof,
                                Optional.empty(),
                                Clashes.NONE,
                                gaveUp.stuck().map(MakePlan::stretch),
                                Insight.NONE));
            }
        });
        return answer.with(new FindInsight(planner, watch, request, asked.needs())
                .find(question.insight(), answer.plan().filter(plan -> isAffordable(request, plan)), answer.proof()));
    }

    /**
     * What is wanted beside a plan that was answered before.
     *
     * @param table as it was then
     * @param answer to this question, with a plan within the budget
     * @param watch may end it; what was not found out by then is said to be unknown
     */
    public Insight insight(Table table, PlanQuestion question, PlanAnswer answer, Watch watch) {
        PlanRequest request = request(asked(table.kitchen(), table.needs(), question), question);
        return new FindInsight(planner, watch, request, answer.needs())
                .find(question.insight(), answer.plan(), answer.proof());
    }

    /**
     * What a planner is asked; empty when a caution stops planning.
     *
     * @throws Refused when there is no such eater, dish or shop, or a file has an error
     */
    public static Optional<PlanRequest> request(Workspace workspace, PlanQuestion question) {
        Table table = Table.of(workspace, question);
        Asked asked = asked(table.kitchen(), table.needs(), question);
        return stopped(asked.needs()) ? Optional.empty() : Optional.of(request(asked, question));
    }

    private static boolean isAffordable(PlanRequest request, Plan plan) {
        return request.budget()
                .filter(budget -> plan.cost().compareTo(budget) > 0)
                .isEmpty();
    }

    private static Asked asked(Kitchen kitchen, List<Needs> needs, PlanQuestion question) {
        return new Asked(
                kitchen,
                question.eaters(),
                needs,
                question.days(),
                question.budget().map(sum -> sum.in(kitchen.currency())),
                question.cooking().sessions(),
                question.cooking().shopOnce());
    }

    /** Whether a caution stops planning for somebody. */
    private static boolean stopped(List<Needs> needs) {
        return needs.stream().anyMatch(n -> n.stopsPlanning() || n.target().isEmpty());
    }

    /** @throws Refused when there is no such dish or food, or one that is asked for cannot be cooked */
    private static PlanRequest request(Asked asked, PlanQuestion question) {
        var request = new PlanRequest(
                asked.kitchen(),
                asked.needs().stream()
                        .map(n -> new Seat(
                                n.eater(),
                                LargestBox.on(
                                        n.target().orElseThrow(),
                                        asked.kitchen().equipment().limits())))
                        .toList(),
                asked.days(),
                asked.budget(),
                question.cooking().number().most(),
                new Cooking(question.cooking().sessions(), question.cooking().vary())
                        .withVariety(Variety.ANY.withLeastDishes(
                                question.cooking().number().least())),
                question.howLong().patience());
        return new AskFor(question.cooking().dishes(), asked.kitchen())
                .in(request)
                .withLeft(question.cooking().left());
    }

    /**
     * Of several sessions, why there is none for the one that has none, or else why all could not be cooked in one. None when somebody
     * stops the search for them: what is half known would be said wrongly.
     */
    private Clashes clashes(PlanRequest request, PlanResult.NoPlan none, Watch watch, Deadline deadline) {
        var finder = new ClashFinder(new UntilStopped(planner, watch), deadline.left());
        Clashes clashes = none.stuck()
                .map(stuck -> finder.clashes(stuck.request(), stuck.proof()))
                .orElseGet(() ->
                        finder.clashes(request.withCooking(request.cooking().once()), none.proof()));
        return watch.stop() ? Clashes.NONE : clashes;
    }

    private static Stretch stretch(PlanResult.Stuck stuck) {
        return new Stretch(stuck.firstDay(), stuck.firstDay() + stuck.request().days() - 1);
    }

    private static PlanAnswer found(Asked asked, Status status, Proof proof, PlanRequest request, Plan plan) {
        AuditReport audit = Audit.of(request, plan);
        if (!audit.passed()) {
            throw new FailedAudit(audit);
        }
        return new PlanAnswer(
                asked,
                status,
                proof,
                Optional.of(new AuditedPlan(plan.apart(), audit)),
                Clashes.NONE,
                Optional.empty(),
                Insight.NONE);
    }

    private static PlanAnswer answer(Asked asked, Status status, Proof proof) {
        return new PlanAnswer(asked, status, proof, Optional.empty(), Clashes.NONE, Optional.empty(), Insight.NONE);
    }
}
