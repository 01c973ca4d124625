package batchwright.report.book;

import batchwright.answer.AtHome;
import batchwright.answer.BookAnswer;
import batchwright.book.EventWords;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;

/** What was written into the book, and what is at home by it. */
public final class BookText {
    private BookText() {}

    public static String of(BookAnswer answer) {
        var page = new Page().line("Wrote in " + answer.file() + ":");
        answer.lines().forEach(line -> page.paragraph("  ", "      ", line));
        return page.toString();
    }

    /** @param changed what was taken away, a line each */
    public static String removed(List<String> changed) {
        var page = new Page().line("Taken away for good:");
        changed.forEach(page::item);
        page.paragraph("What they ate counts as at home again: count foods that matter.");
        return page.toString();
    }

    public static String of(AtHome home) {
        var page = new Page();
        if (home.lastLines().isEmpty()) {
            page.paragraph("The book is empty.");
        } else {
            page.line("LAST LINES OF THE BOOK, each with its number");
            home.lastLines()
                    .forEach(entry -> page.paragraph(
                            "  %4d  ".formatted(entry.line()),
                            " ".repeat(10),
                            EventWords.line(entry.day(), entry.event())));
        }
        page.heading("CONTAINERS on " + Dates.inFull(home.day()));
        home.boxes()
                .forEach(lot ->
                        page.paragraph("  ", "      ", lot.boxes().eater() + ": " + TodayText.lot(lot, home.day())));
        if (home.boxes().isEmpty()) {
            page.line("  none");
        }
        page.heading("FOODS, grams as bought");
        var table = new TextTable("  ").right("g").left("food").left("use by");
        home.foods()
                .forEach((food, lots) -> lots.forEach(lot -> table.row(
                        Show.whole(lot.grams()),
                        food.name(),
                        lot.useBy().map(by -> Dates.shortly(by, home.day())).orElse(""))));
        if (home.foods().isEmpty()) {
            page.line("  none");
        } else {
            page.table(table);
        }
        return page.toString();
    }
}
