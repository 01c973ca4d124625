package batchwright.report.html;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.needs.Needs;
import batchwright.plan.Plan;
import batchwright.report.labels.LabelCss;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/** The report as one HTML file: no script, no font, no picture from elsewhere. The same answer gives the same bytes. */
public final class HtmlReport {
    private static final String GENERATOR = "Batchwright";
    private static final String STYLE_SHEET = "report.css";

    private HtmlReport() {}

    /** Whether a file with this beginning is such a report. */
    public static boolean isIn(String beginning) {
        return beginning.contains("name=\"generator\" content=\"" + GENERATOR + "\"");
    }

    public static String of(PlanAnswer answer, ReportStyle style) {
        return file(
                answer,
                style,
                html -> answer.plan()
                        .ifPresentOrElse(
                                plan -> pages(html, answer, plan, style), () -> new NoPlanPage(answer).write(html)));
    }

    private static String file(PlanAnswer whole, ReportStyle style, Consumer<Html> body) {
        var html = new Html();
        html.open("html", "lang", "en").open("head").line();
        String css = styleSheet() + LabelCss.of(style.labels());
        html.empty("meta", "charset", "utf-8").line();
        html.empty("meta", "http-equiv", "Content-Security-Policy", "content", ContentPolicy.allowingOnly(css))
                .line();
        html.empty("meta", "name", "generator", "content", GENERATOR).line();
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        html.empty("meta", "name", "color-scheme", "content", "light dark").line();
        html.element("title", PlanPage.forWhom(whole) + " – Batchwright").line();
        html.style(css).close().line();
        html.open("body").line();
        body.accept(html);
        html.close().close().line();
        return "<!DOCTYPE html>\n" + html;
    }

    /** What holds for all sessions, and then each with pages of its own; of one, the first are left out. */
    private static void pages(Html html, PlanAnswer answer, Plan plan, ReportStyle style) {
        List<PlanPage> sessions = PlanPage.all(answer, style);
        new AnswerSection(answer, plan, sessions).write(html);
        html.open("main").line();
        if (!plan.isCookedOnce()) {
            whole(html, answer);
            if (answer.asked().shopOnce()) {
                ShoppingPage.writeForAll(html, answer, plan);
            }
        }
        sessions.forEach(page -> session(html, page, answer));
        html.close().line();
    }

    private static void whole(Html html, PlanAnswer answer) {
        html.open("section", "id", "all", "class", "page plan", "aria-labelledby", "all-h");
        html.element("h2", "All sessions", "id", "all-h").line();
        for (Needs needs : answer.needs()) {
            html.open("section", "class", "block").open("h3").text("All days: ");
            html.name(needs.eater().name()).close().line();
            DaysSection.body(html, needs, answer.intakes(needs));
            html.close().line();
        }
        cautions(html, answer);
        html.close().line();
    }

    private static void cautions(Html html, PlanAnswer answer) {
        CautionsSection.write(html, Notice.of(answer), answer.needs().size());
    }

    private static void session(Html html, PlanPage page, PlanAnswer answer) {
        boolean alone = page.session() == 0;
        if (alone) {
            html.open("section", "id", "plan", "class", "page plan", "aria-labelledby", "plan-h");
            html.element("h2", "The plan", "id", "plan-h").line();
        } else {
            page.open(html, "plan", "The plan", "");
        }
        new DaysSection(page).write(html);
        new CostSection(page).write(html);
        if (alone) {
            cautions(html, answer);
        }
        html.close().line();
        if (answer.asked().shopOnce()) {
            new ShoppingPage(page).writeWhatIsAtHome(html);
        } else {
            new ShoppingPage(page).write(html);
        }
        new CookingPage(page).write(html);
        new LabelsPage(page).write(html);
    }

    private static String styleSheet() {
        try (InputStream in = HtmlReport.class.getResourceAsStream(STYLE_SHEET)) {
            return new String(Objects.requireNonNull(in, STYLE_SHEET).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
