package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What every page needs of a cooking session of a plan that was found.
 *
 * @param answer to what the session was asked for
 * @param session its number, the first being 1; 0 when there is only one
 */
record PlanPage(PlanAnswer answer, Session plan, ReportStyle style, Schedule schedule, int session) {
    /** One for each session. */
    static List<PlanPage> all(PlanAnswer answer, ReportStyle style) {
        List<PlanAnswer> sessions = answer.sessions();
        List<PlanPage> pages = new ArrayList<>();
        for (PlanAnswer one : sessions) {
            Session session = one.plan().orElseThrow().first();
            int number = sessions.size() == 1 ? 0 : pages.size() + 1;
            pages.add(new PlanPage(one, session, style, Schedule.of(session.batches()), number));
        }
        return pages;
    }

    /** By which number its cooking day is called. */
    int firstDay() {
        return plan.firstDay();
    }

    /** By which a page of this session is linked to. */
    String id(String page) {
        return session == 0 ? page : page + "-" + session;
    }

    /** What of the session's days is eaten by an eater. */
    List<EatenDay> eaten(EaterDays eater) {
        return eater.days().stream().map(day -> EatenDay.of(plan, eater, day)).toList();
    }

    Currency currency() {
        return answer.kitchen().currency();
    }

    /** 5 days for Lifter, gaining. */
    String forWhom() {
        return session == 0
                ? forWhom(answer)
                : "Days " + plan.firstDay() + " to " + plan.lastDay() + " for " + eaters(answer);
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
