package batchwright.answer;

import java.util.List;

/**
 * What was written into the book.
 *
 * @param file as the user knows it
 * @param lines without their ends
 */
public record BookAnswer(String file, List<String> lines) {
    public BookAnswer {
        lines = List.copyOf(lines);
    }
}
