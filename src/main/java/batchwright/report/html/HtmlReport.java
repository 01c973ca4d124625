package batchwright.report.html;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.report.labels.LabelCss;
import batchwright.report.plan.SessionsAnswer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
                                plan -> pages(html, PlanPage.of(answer, plan, style)),
                                () -> new NoPlanPage(answer).write(html)));
    }

    /** Of several cooking sessions, each with its own pages. */
    public static String of(SessionsAnswer answer, ReportStyle style) {
        return file(answer.whole(), style, html -> {
            if (answer.sessions().isEmpty()) {
                new NoPlanPage(answer.whole(), answer.stuck().map(SessionsAnswer.Stretch::hasNoPlan)).write(html);
            } else {
                new SessionsPages(answer, style).write(html);
            }
        });
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

    private static void pages(Html html, PlanPage page) {
        new AnswerSection(page).write(html);
        html.open("main").line();
        html.open("section", "id", "plan", "class", "page plan", "aria-labelledby", "plan-h");
        html.element("h2", "The plan", "id", "plan-h").line();
        new DaysSection(page).write(html);
        new CostSection(page).write(html);
        CautionsSection.write(
                html, Notice.of(page.answer()), page.answer().needs().size());
        html.close().line();
        new ShoppingPage(page).write(html);
        new CookingPage(page).write(html);
        new LabelsPage(page).write(html);
        html.close().line();
    }

    private static String styleSheet() {
        try (InputStream in = HtmlReport.class.getResourceAsStream(STYLE_SHEET)) {
            return new String(Objects.requireNonNull(in, STYLE_SHEET).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
