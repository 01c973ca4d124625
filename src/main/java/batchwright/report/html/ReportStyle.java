package batchwright.report.html;

import batchwright.report.cooking.KitchenClock;
import batchwright.report.html.part.Document;
import batchwright.report.labels.LabelCss;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** What a reader chooses of a report: the sheet of labels, whose paper all pages are for, and the rounding of labels. */
public record ReportStyle(LabelSheet labels, LabelRounding rounding, KitchenClock clock) {
    private static final String STYLE_SHEET = "report.css";

    /** With the minutes of cooking since its start. */
    public ReportStyle(LabelSheet labels, LabelRounding rounding) {
        this(labels, rounding, KitchenClock.FROM_ZERO);
    }

    public ReportStyle by(KitchenClock other) {
        return new ReportStyle(labels, rounding, other);
    }

    Document document(String title) {
        return new Document(title + " – " + Document.GENERATOR, styleSheet() + LabelCss.of(labels));
    }

    private static String styleSheet() {
        try (InputStream in = ReportStyle.class.getResourceAsStream(STYLE_SHEET)) {
            return new String(Objects.requireNonNull(in, STYLE_SHEET).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
