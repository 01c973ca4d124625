package batchwright.report.html;

import batchwright.report.labels.Shortened;
import batchwright.report.print.Dates;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What stands above and below each sheet of paper of a session's pages, so that a sheet that lies about in a kitchen still says what it
 * belongs to: the plan, the session, the day, and which page of how many (CSS Paged Media Level 3, page-margin boxes). A browser that knows
 * none leaves them out.
 */
final class SheetHead {
    /** One line of the head. */
    private static final int MOST_LETTERS = 70;

    private SheetHead() {}

    /** Labels say by themselves what they belong to. */
    private static final String COUNT = """
            @page { @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; } }
            @page labels { @top-left { content: none; } @top-right { content: none; } @bottom-right { content: none; } }
            """;

    /** @param pages none when there is no plan */
    static String css(List<PlanPage> pages) {
        return whole(pages) + pages.stream().map(SheetHead::head).collect(Collectors.joining()) + COUNT;
    }

    /** Of the sheets that belong to no single one of several sessions. */
    private static String whole(List<PlanPage> pages) {
        if (pages.size() < 2) {
            return "";
        }
        String names = pages.get(0).answer().needs().stream()
                .map(needs -> needs.eater().name())
                .collect(Collectors.joining(" and "));
        return "@page {\n"
                + boxes(
                        "all sessions for " + names,
                        "first cooking day " + Dates.inFull(pages.get(0).plan().cookingDay()))
                + "}\n";
    }

    /** The only session's sheets are all sheets. */
    private static String head(PlanPage page) {
        if (page.session() == 0) {
            return "@page {\n" + boxes(page) + "}\n";
        }
        String pages =
                Stream.of("plan", "shop", "cook").map(id -> "#" + page.id(id)).collect(Collectors.joining(", "));
        return "@media print { " + pages + " { page: session-" + page.session() + "; } }\n" + "@page session-"
                + page.session() + " {\n" + boxes(page) + "}\n";
    }

    private static String boxes(PlanPage page) {
        String plan = page.forWhom() + (page.session() == 0 ? "" : ", session " + page.session());
        return boxes(plan, "cooking day " + Dates.inFull(page.plan().cookingDay()));
    }

    private static String boxes(String left, String right) {
        return """
                  @top-left { content: %s; font: 8pt sans-serif; width: 60%%; }
                  @top-right { content: %s; font: 8pt sans-serif; width: 40%%; }
                """.formatted(quoted(Shortened.to(MOST_LETTERS, left)), quoted(right));
    }

    /** A string of CSS (CSS Syntax Level 3): all but plain letters and figures as code points, so that a name cannot end it. */
    static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> {
            if (letter < 128 && (Character.isLetterOrDigit(letter) || letter == ' ')) {
                quoted.appendCodePoint(letter);
            } else {
                quoted.append('\\').append(Integer.toHexString(letter)).append(' ');
            }
        });
        return quoted.append('"').toString();
    }
}
