package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.quantity.Currency;
import batchwright.report.plan.SessionsAnswer;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import batchwright.schedule.Schedule;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What every page needs of a plan that was found.
 *
 * @param session its number, the first being 1; 0 when there is only one
 * @param firstDay by which number its cooking day is called
 */
record PlanPage(PlanAnswer answer, Plan plan, ReportStyle style, Schedule schedule, int session, int firstDay) {
    static PlanPage of(PlanAnswer answer, Plan plan, ReportStyle style) {
        return new PlanPage(answer, plan, style, schedule(answer, plan), 0, 1);
    }

    static PlanPage of(SessionsAnswer.One session, int number, ReportStyle style) {
        Plan plan = session.plan();
        return new PlanPage(
                session.answer(), plan, style, schedule(session.answer(), plan), number, session.firstDay());
    }

    private static Schedule schedule(PlanAnswer answer, Plan plan) {
        return Schedule.of(plan.batches(), answer.kitchen().equipment());
    }

    /** By which a page of this session is linked to. */
    String id(String page) {
        return session == 0 ? page : page + "-" + session;
    }

    /** What of the session's days is eaten by an eater. */
    List<EatenDay> eaten(EaterDays eater) {
        return eater.days().stream()
                .map(day -> EatenDay.of(plan, eater, day, firstDay))
                .toList();
    }

    Currency currency() {
        return answer.kitchen().currency();
    }

    /** 5 days for Lifter, gaining. */
    String forWhom() {
        return session == 0
                ? forWhom(answer)
                : "Days " + firstDay + " to " + (firstDay + answer.days() - 1) + " for " + eaters(answer);
    }

    private static String eaters(PlanAnswer answer) {
        return answer.needs().stream().map(n -> n.eater().name()).collect(Collectors.joining(" and "));
    }

    static String forWhom(PlanAnswer answer) {
        return Show.count(answer.days(), "day", "days") + " for " + eaters(answer);
    }

    int containers() {
        return plan.batches().stream().mapToInt(Batch::containers).sum();
    }

    /** The head of a page: what it is, and below it whose plan it belongs to, so that a lone sheet of paper tells. */
    void open(Html html, String id, String heading, String says) {
        html.open("section", "id", id(id), "class", "page " + id, "aria-labelledby", id(id) + "-h");
        html.element("h2", heading + (session == 0 ? "" : ", session " + session), "id", id(id) + "-h");
        html.open("p", "class", "whose")
                .name(forWhom())
                .text(", cooking day " + Dates.inFull(answer.kitchen().cookingDay()))
                .close();
        if (!says.isEmpty()) {
            html.element("p", says, "class", "says");
        }
        html.line();
    }
}
