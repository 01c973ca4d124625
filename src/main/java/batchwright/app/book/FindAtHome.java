package batchwright.app.book;

import batchwright.answer.AtHome;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Entry;
import java.util.Comparator;
import java.util.List;

/** What the book says is at home. */
public final class FindAtHome {
    private static final int LAST_LINES = 10;

    private FindAtHome() {}

    /** @throws Refused when a file has an error */
    public static AtHome answer(Workspace workspace) {
        Book book = workspace.book();
        List<Entry> byLine = book.entries().stream()
                .sorted(Comparator.comparingInt(Entry::line))
                .toList();
        return new AtHome(
                workspace.cookingDay(),
                byLine.subList(Math.max(0, byLine.size() - LAST_LINES), byLine.size()),
                BoxesLeft.of(book).lots(),
                workspace.foods().pantry());
    }
}
