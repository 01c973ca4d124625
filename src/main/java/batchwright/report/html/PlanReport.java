package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Plan;
import batchwright.report.html.part.Document;
import java.util.List;
import java.util.Optional;

/**
 * The report of a plan.
 *
 * @param whole what holds for all sessions, when there are several
 * @param shopOnce the shopping list for all sessions, when all is bought before the first
 */
public record PlanReport(
        Document document,
        AnswerSection answer,
        Optional<WholeSection> whole,
        Optional<ShoppingPage> shopOnce,
        List<SessionPages> sessions) {
    public static PlanReport of(PlanAnswer answer, Plan plan, ReportStyle style) {
        List<PlanPage> pages = PlanPage.all(answer, style);
        boolean once = plan.isCookedOnce();
        boolean shopOnce = answer.asked().shopOnce();
        return new PlanReport(
                style.document(PlanPage.forWhom(answer), pages),
                AnswerSection.of(answer, plan, pages),
                once ? Optional.empty() : Optional.of(WholeSection.of(answer)),
                shopOnce ? Optional.of(ShoppingPage.forAll(answer, plan)) : Optional.empty(),
                pages.stream()
                        .map(page -> once ? SessionPages.of(page) : SessionPages.ofSeveral(page, shopOnce))
                        .toList());
    }
}
