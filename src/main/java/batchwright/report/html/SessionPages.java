package batchwright.report.html;

import batchwright.answer.Notice;
import batchwright.report.html.part.PageHead;
import java.util.List;
import java.util.Optional;

/**
 * The pages of one cooking session.
 *
 * @param days of each eater
 * @param cautions left out when they stand with what holds for all sessions
 */
public record SessionPages(
        PageHead head,
        List<DaysSection> days,
        CostSection cost,
        Optional<CautionsSection> cautions,
        ShoppingPage shopping,
        CookingPage cooking,
        LabelsPage labels) {
    /** The only one. */
    static SessionPages of(PlanPage page) {
        var cautions = CautionsSection.of(
                Notice.of(page.answer()), page.answer().needs().size());
        var head = new PageHead("plan", "plan", "The plan", "", "", "");
        return of(page, head, Optional.of(cautions), ShoppingPage.of(page));
    }

    /** One of several. */
    static SessionPages ofSeveral(PlanPage page, boolean shopOnce) {
        return of(
                page,
                page.head("plan", "The plan", ""),
                Optional.empty(),
                shopOnce ? ShoppingPage.whatIsAtHome(page) : ShoppingPage.of(page));
    }

    private static SessionPages of(
            PlanPage page, PageHead head, Optional<CautionsSection> cautions, ShoppingPage shopping) {
        return new SessionPages(
                head,
                page.plan().eaters().stream()
                        .map(eater -> DaysSection.of(page, eater))
                        .toList(),
                CostSection.of(page),
                cautions,
                shopping,
                CookingPage.of(page),
                LabelsPage.of(page));
    }
}
