package batchwright.report.html;

import batchwright.report.cooking.KitchenClock;
import batchwright.report.html.part.Document;
import batchwright.report.labels.LabelCss;
import batchwright.report.labels.LabelStyle;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** What a reader chooses for a report: its labels, whose paper size all pages take, and the time of day its schedule shows. */
public record ReportStyle(LabelStyle labels, KitchenClock clock) {
    private static final String STYLE_SHEET = "report.css";
    private static final String SCRIPT = "report.js";

    /** With the minutes of cooking since its start. */
    public ReportStyle(LabelStyle labels) {
        this(labels, KitchenClock.FROM_ZERO);
    }

    /** @param pages whose sheets of paper say what they belong to */
    Document document(String title, List<PlanPage> pages) {
        return new Document(
                title + " – " + Document.GENERATOR,
                styleSheet() + LabelCss.of(labels.sheet()) + SheetHead.css(pages),
                pages.isEmpty() ? "" : resource(SCRIPT));
    }

    /** The style sheet that all pages share. */
    public static String styleSheet() {
        return resource(STYLE_SHEET);
    }

    private static String resource(String name) {
        try (InputStream in = ReportStyle.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
