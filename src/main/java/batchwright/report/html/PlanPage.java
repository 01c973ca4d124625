package batchwright.report.html;

import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.report.Dates;
import batchwright.report.PlanAnswer;
import batchwright.report.Show;
import batchwright.schedule.Schedule;
import java.util.stream.Collectors;

/** What every page needs of a plan that was found. */
record PlanPage(PlanAnswer answer, Plan plan, ReportStyle style, Schedule schedule) {
    static PlanPage of(PlanAnswer answer, Plan plan, ReportStyle style) {
        return new PlanPage(answer, plan, style, Schedule.of(plan.batches()));
    }

    String currency() {
        return answer.kitchen().currency();
    }

    /** 5 days for Lifter, gaining. */
    String forWhom() {
        return forWhom(answer);
    }

    static String forWhom(PlanAnswer answer) {
        return Show.count(answer.days(), "day", "days") + " for "
                + answer.needs().stream().map(n -> n.eater().name()).collect(Collectors.joining(" and "));
    }

    int containers() {
        return plan.batches().stream().mapToInt(Batch::containers).sum();
    }

    /** The head of a page: what it is, and below it whose plan it belongs to, so that a lone sheet of paper tells. */
    void open(Html html, String id, String heading, String says) {
        html.open("section", "id", id, "class", "page", "aria-labelledby", id + "-h");
        html.element("h2", heading, "id", id + "-h");
        html.open("p", "class", "whose")
                .name(forWhom())
                .text(", cooking day " + Dates.inFull(answer.kitchen().cookingDay()))
                .close();
        html.element("p", says, "class", "says").line();
    }
}
