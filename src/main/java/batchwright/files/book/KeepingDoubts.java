package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.BoxKeeping;
import batchwright.book.Entry;
import batchwright.book.Event.Bought;
import batchwright.book.Event.Filled;
import batchwright.book.Event.Moved;
import batchwright.book.Event.Place;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.text.Problem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

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
        book.all(Moved.class).forEach(moved -> doubts.look(moved.entry(), moved.event()));
        book.all(Bought.class)
                .forEach(bought -> bought.event().useBy().ifPresent(until -> doubts.notBefore(bought.entry(), until)));
        return doubts.doubts;
    }

    private void look(Entry entry, Filled filled) {
        notBefore(entry, filled.until());
        String dish = filled.boxes().dish();
        if (filled.place() == Place.FREEZER) {
            notLongerFrozen(entry, filled.until(), dish);
        } else {
            kitchen.dish(dish)
                    .map(Dish::fridgeDays)
                    .ifPresent(days -> notAfter(
                            entry,
                            filled.until(),
                            entry.day().plusDays(days - 1L),
                            "the %s days that %s keeps in the fridge".formatted(days, dish)));
        }
    }

    private void look(Entry entry, Moved moved) {
        moved.until().ifPresent(until -> {
            notBefore(entry, until);
            if (moved.to() == Place.FREEZER) {
                notLongerFrozen(entry, until, moved.boxes().dish());
            } else {
                int days = BoxKeeping.MOST_THAWED_DAYS;
                notAfter(
                        entry,
                        until,
                        entry.day().plusDays(days),
                        "the %s days that a container takes to thaw and to be eaten".formatted(days));
            }
        });
    }

    private void notLongerFrozen(Entry entry, LocalDate until, String dish) {
        notAfter(
                entry,
                until,
                entry.day().plusDays(FREEZER_DAYS),
                "the %s days that %s keeps in the freezer".formatted(FREEZER_DAYS, dish));
    }

    private void notBefore(Entry entry, LocalDate until) {
        if (until.isBefore(entry.day())) {
            doubts.add(Problem.warning(
                    entry.at(),
                    "until %s is before the day of the line, %s".formatted(until, entry.day()),
                    "is the month or the year right?"));
        }
    }

    private void notAfter(Entry entry, LocalDate until, LocalDate last, String days) {
        if (until.isAfter(last)) {
            doubts.add(Problem.warning(
                    entry.at(),
                    "until %s is more than %s".formatted(until, days),
                    "until %s at the latest".formatted(last)));
        }
    }
}
