package batchwright.report.html;

import batchwright.report.html.part.Document;
import batchwright.report.labels.LabelCss;
import batchwright.report.labels.LabelStyle;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** What a reader chooses of a report: its labels, whose paper all pages are for. */
public record ReportStyle(LabelStyle labels) {
    private static final String STYLE_SHEET = "report.css";

    /** @param pages whose sheets of paper say what they belong to */
    Document document(String title, List<PlanPage> pages) {
        String css = styleSheet()
                + LabelCss.of(labels.sheet())
                + pages.stream().map(SheetHead::css).collect(Collectors.joining());
        return new Document(title + " – " + Document.GENERATOR, css);
    }

    private static String styleSheet() {
        try (InputStream in = ReportStyle.class.getResourceAsStream(STYLE_SHEET)) {
            return new String(Objects.requireNonNull(in, STYLE_SHEET).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
