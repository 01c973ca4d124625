package batchwright.report.html;

import batchwright.needs.Needs;
import batchwright.report.plan.SessionsAnswer;
import java.util.ArrayList;
import java.util.List;

/** The report of several cooking sessions: the answer, what holds for all days, and then each session with pages of its own. */
final class SessionsPages {
    private final SessionsAnswer answer;
    private final List<PlanPage> pages = new ArrayList<>();

    SessionsPages(SessionsAnswer answer, ReportStyle style) {
        this.answer = answer;
        for (int s = 0; s < answer.sessions().size(); s++) {
            pages.add(PlanPage.of(answer.sessions().get(s), s + 1, style));
        }
    }

    void write(Html html) {
        new SessionsSection(answer, pages).write(html);
        html.open("main").line();
        whole(html);
        if (answer.shopOnce()) {
            new BuyOncePage(answer).write(html);
        }
        pages.forEach(page -> session(html, page));
        html.close().line();
    }

    private void whole(Html html) {
        html.open("section", "id", "all", "class", "page plan", "aria-labelledby", "all-h");
        html.element("h2", "All sessions", "id", "all-h").line();
        for (Needs needs : answer.whole().needs()) {
            html.open("section", "class", "block").open("h3").text("All days: ");
            html.name(needs.eater().name()).close().line();
            DaysSection.body(html, needs, answer.intakes(needs));
            html.close().line();
        }
        CautionsSection.write(html, answer.notices(), answer.whole().needs().size());
        html.close().line();
    }

    private void session(Html html, PlanPage page) {
        page.open(html, "plan", "The plan", "");
        new DaysSection(page).write(html);
        new CostSection(page).write(html);
        html.close().line();
        if (answer.shopOnce()) {
            new ShoppingPage(page).writeWhatIsAtHome(html);
        } else {
            new ShoppingPage(page).write(html);
        }
        new CookingPage(page).write(html);
        new LabelsPage(page).write(html);
    }
}
