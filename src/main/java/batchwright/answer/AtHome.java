package batchwright.answer;

import batchwright.book.BoxesLeft;
import batchwright.book.Entry;
import batchwright.food.Food;
import batchwright.food.Lot;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What is at home on a day, by the book, and its last lines.
 *
 * @param foods grams as purchased
 */
public record AtHome(LocalDate day, List<Entry> lastLines, List<BoxesLeft.Lot> boxes, Map<Food, List<Lot>> foods) {
    public AtHome {
        lastLines = List.copyOf(lastLines);
        boxes = List.copyOf(boxes);
    }
}
