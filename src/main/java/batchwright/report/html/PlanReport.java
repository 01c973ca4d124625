package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Plan;
import batchwright.report.html.part.Document;
import batchwright.report.plan.SessionsAnswer;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

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
    static PlanReport of(PlanAnswer answer, Plan plan, ReportStyle style) {
        PlanPage page = PlanPage.of(answer, plan, style);
        return new PlanReport(
                style.document(page.forWhom(), List.of(page)),
                AnswerSection.of(page),
                Optional.empty(),
                Optional.empty(),
                List.of(SessionPages.of(page)));
    }

    /** Of several cooking sessions, each with its own pages. */
    static PlanReport of(SessionsAnswer answer, ReportStyle style) {
        List<PlanPage> pages = IntStream.range(0, answer.sessions().size())
                .mapToObj(s -> PlanPage.of(answer.sessions().get(s), s + 1, style))
                .toList();
        return new PlanReport(
                style.document(PlanPage.forWhom(answer.whole()), pages),
                new SessionsSection(answer, pages).section(),
                Optional.of(WholeSection.of(answer)),
                answer.shopOnce() ? Optional.of(new BuyOncePage(answer).page()) : Optional.empty(),
                pages.stream()
                        .map(page -> SessionPages.ofSeveral(page, answer.shopOnce()))
                        .toList());
    }
}
