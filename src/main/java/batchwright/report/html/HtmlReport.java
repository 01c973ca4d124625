package batchwright.report.html;

import batchwright.report.PlanAnswer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The report as one HTML file: no script, no font, no picture from elsewhere. The same answer gives the same bytes. */
public final class HtmlReport {
    private static final String STYLE_SHEET = "report.css";

    private HtmlReport() {}

    public static String of(PlanAnswer answer, ReportStyle style) {
        var html = new Html();
        html.open("html", "lang", "en").open("head").line();
        html.empty("meta", "charset", "utf-8").line();
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        html.empty("meta", "name", "color-scheme", "content", "light dark").line();
        html.element("title", PlanPage.forWhom(answer) + " – Batchwright").line();
        html.style(styleSheet()).style(LabelCss.of(style.labels())).close().line();
        html.open("body").line();
        answer.plan()
                .ifPresentOrElse(
                        plan -> pages(html, PlanPage.of(answer, plan, style)),
                        () -> new NoPlanPage(answer).write(html));
        html.close().close().line();
        return "<!DOCTYPE html>\n" + html;
    }

    private static void pages(Html html, PlanPage page) {
        new AnswerSection(page).write(html);
        html.open("main").line();
        html.open("section", "id", "plan", "class", "page", "aria-labelledby", "plan-h");
        html.element("h2", "The plan", "id", "plan-h").line();
        new DaysSection(page).write(html);
        new CostSection(page).write(html);
        CautionsSection.write(html, page.answer());
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
