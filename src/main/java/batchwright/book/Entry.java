package batchwright.book;

import batchwright.text.Span;
import java.time.LocalDate;

/**
 * A line of the book.
 *
 * @param at where it stands
 */
public record Entry(Span at, LocalDate day, Event event) {
    public int line() {
        return at.line();
    }
}
