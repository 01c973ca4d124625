package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.Entry;
import batchwright.book.Event.Bought;
import batchwright.book.Event.Filled;
import batchwright.book.Event.Place;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.text.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Last days that come before the line's own, or later than a dish keeps. */
final class KeepingDoubts {
    /** Our choice: much longer than dishes keep their quality; it finds a slip in the year. */
    private static final int FREEZER_DAYS = 365;

    private final Kitchen kitchen;
    private final List<Problem> doubts = new ArrayList<>();

    private KeepingDoubts(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    static List<Problem> of(Book book, Kitchen kitchen) {
        var doubts = new KeepingDoubts(kitchen);
        book.all(Filled.class).forEach(filled -> doubts.look(filled.entry(), filled.event()));
        book.all(Bought.class)
                .forEach(bought -> bought.event().useBy().ifPresent(until -> doubts.notBefore(bought.entry(), until)));
        return doubts.doubts;
    }

    private void look(Entry entry, Filled filled) {
        notBefore(entry, filled.until());
        if (filled.place() == Place.FREEZER) {
            notAfter(entry, filled, FREEZER_DAYS, entry.day().plusDays(FREEZER_DAYS));
        } else {
            Optional.ofNullable(kitchen.dishes().get(filled.boxes().dish()))
                    .map(Dish::fridgeDays)
                    .ifPresent(days -> notAfter(entry, filled, days, entry.day().plusDays(days - 1L)));
        }
    }

    private void notBefore(Entry entry, LocalDate until) {
        if (until.isBefore(entry.day())) {
            doubts.add(Problem.warning(
                    entry.at(),
                    "until %s is before the day of the line, %s".formatted(until, entry.day()),
                    "is the month or the year right?"));
        }
    }

    private void notAfter(Entry entry, Filled filled, int days, LocalDate last) {
        if (filled.until().isAfter(last)) {
            doubts.add(Problem.warning(
                    entry.at(),
                    "until %s is more than the %s days that %s keeps in the %s"
                            .formatted(
                                    filled.until(),
                                    days,
                                    filled.boxes().dish(),
                                    filled.place() == Place.FREEZER ? "freezer" : "fridge"),
                    "until %s at the latest: the day it is filled is day 1".formatted(last)));
        }
    }
}
