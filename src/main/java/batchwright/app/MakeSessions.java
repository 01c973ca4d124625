package batchwright.app;

import batchwright.answer.PlanAnswer;
import batchwright.answer.PlanAnswer.Status;
import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.audit.SessionsAudit;
import batchwright.explain.Insight;
import batchwright.food.Kitchen;
import batchwright.needs.Needs;
import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.plan.SessionsPlan;
import batchwright.plan.SessionsRequest;
import batchwright.plan.SessionsResult;
import batchwright.plan.Watch;
import batchwright.report.plan.SessionsAnswer;
import batchwright.solve.session.SessionsPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to cook in several sessions, to eat and to buy. It is shown only when the audit has worked out all of it again. */
final class MakeSessions {
    private final MakePlan plans;
    private final Planner planner;

    MakeSessions(MakePlan plans, Planner planner) {
        this.plans = plans;
        this.planner = planner;
    }

    SessionsAnswer answer(Workspace workspace, SessionsQuestion question, Watch watch) {
        Deadline deadline = Deadline.in(question.whole().patience());
        Kitchen all = workspace.kitchen();
        List<Needs> needs = MakePlan.needs(workspace, all, question.whole().eaters());
        if (MakePlan.stopped(needs)) {
            return new Answering(all, needs, question).none(Status.NO_PLAN, Proof.NONE, List.of(), Optional.empty());
        }
        PlanRequest whole = MakePlan.request(all, needs, question.whole());
        var request = new SessionsRequest(whole.withPatience(deadline.left()), question.cooks(), question.vary());
        watch.paidIn(all.currency());
        SessionsResult result = new SessionsPlanner(planner).plan(request, watch);
        var answering = new Answering(all, needs, question);
        Proof proof =
                result.proof().stoppedBySomebody(watch.stop() && result.outcome() == SessionsResult.Outcome.NOT_PROVEN);
        if (result.plan().isPresent()) {
            return answering.some(request, result.plan().get(), proof);
        }
        Status status = result.outcome() == SessionsResult.Outcome.NO_PLAN ? Status.NO_PLAN : Status.NOT_PROVEN;
        List<Clash> clashes = status == Status.NO_PLAN ? clashes(whole, result, watch, deadline) : List.of();
        return answering.none(status, proof, clashes, result.stuck());
    }

    private List<Clash> clashes(PlanRequest whole, SessionsResult result, Watch watch, Deadline deadline) {
        return result.stuck()
                .map(stuck -> plans.clashes(stuck.request(), stuck.proof(), watch, deadline))
                .orElseGet(() -> plans.clashes(whole, result.proof(), watch, deadline));
    }

    /** What is the same in every answer to a question. */
    private record Answering(Kitchen kitchen, List<Needs> needs, SessionsQuestion question) {
        SessionsAnswer none(Status status, Proof proof, List<Clash> clashes, Optional<SessionsResult.Stuck> stuck) {
            PlanQuestion whole = question.whole();
            return new SessionsAnswer(
                    new PlanAnswer(
                            kitchen,
                            whole.eaters(),
                            needs,
                            whole.days(),
                            whole.budget().map(sum -> sum.in(kitchen.currency())),
                            status,
                            proof,
                            Optional.empty(),
                            Optional.empty(),
                            clashes,
                            Insight.NONE),
                    question.cooks(),
                    question.shopOnce(),
                    List.of(),
                    Optional.empty(),
                    stuck.map(s -> new SessionsAnswer.Stretch(
                            s.firstDay(), s.firstDay() + s.request().days() - 1)));
        }

        SessionsAnswer some(SessionsRequest request, SessionsPlan plan, Proof proof) {
            AuditReport audit = SessionsAudit.of(request, plan);
            if (!audit.passed()) {
                throw new FailedAudit(audit);
            }
            List<SessionsAnswer.One> sessions = new ArrayList<>();
            for (Session session : plan.sessions()) {
                sessions.add(new SessionsAnswer.One(session.firstDay(), one(session)));
            }
            Status status = proof.provenCheapest() ? Status.PLANNED : Status.NOT_PROVEN;
            return none(status, proof, List.of(), Optional.empty()).with(sessions, audit);
        }

        /** Without the names by which the command could be given again: it would be another question. */
        private PlanAnswer one(Session session) {
            Proof proof = session.plan().proof();
            return new PlanAnswer(
                    session.request().kitchen().withDishes(kitchen.dishes()),
                    List.of(),
                    needs,
                    session.request().days(),
                    Optional.empty(),
                    proof.provenCheapest() ? Status.PLANNED : Status.NOT_PROVEN,
                    proof,
                    Optional.of(session.plan()),
                    Optional.of(Audit.of(session.request(), session.plan())),
                    List.of(),
                    Insight.NONE);
        }
    }
}
