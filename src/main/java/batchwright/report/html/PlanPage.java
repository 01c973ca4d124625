package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Batch;
import batchwright.plan.EaterDays;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.report.html.part.PageHead;
import batchwright.report.html.part.WayThrough;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
            pages.add(new PlanPage(one, session, style, one.schedule().orElseThrow(), number));
        }
        return pages;
    }

    /** The number of its cooking day. */
    int firstDay() {
        return plan.firstDay();
    }

    /** The id by which a page of this session is linked to. */
    String id(String page) {
        return session == 0 ? page : page + "-" + session;
    }

    /** What an eater eats on the session's days. */
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

    PageHead head(String page, String heading, String says) {
        return new PageHead(
                id(page),
                page,
                heading + (session == 0 ? "" : ", session " + session),
                forWhom(),
                ", cooking day " + Dates.inFull(answer.kitchen().cookingDay()),
                says);
    }

    /** @param shop what that page is called */
    WayThrough way(String label, String says, String shop) {
        return new WayThrough(
                label,
                says,
                Stream.of("plan", "shop", "cook", "labels")
                        .map(page -> new WayThrough.Link(page.equals("shop") ? shop : Show.capital(page), id(page)))
                        .toList());
    }
}
