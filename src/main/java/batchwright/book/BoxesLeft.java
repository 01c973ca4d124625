package batchwright.book;

import batchwright.book.Event.AteBoxes;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.BoxesGone;
import batchwright.book.Event.Filled;
import batchwright.book.Event.Holds;
import batchwright.book.Event.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The containers that are there, by what the book says of filling and eating. Those that must go first are taken first, those past their last day last. */
public final class BoxesLeft {
    private final List<Lot> lots = new ArrayList<>();
    private final List<Overdrawn> shortfalls = new ArrayList<>();

    /**
     * Containers that are alike.
     *
     * @param boxes how many are left
     */
    public record Lot(Boxes boxes, LocalDate filled, Place place, LocalDate until, Holds each) {
        public boolean isOf(Boxes wanted) {
            return boxes.dish().equals(wanted.dish()) && boxes.eater().equals(wanted.eater());
        }

        public int count() {
            return boxes.count();
        }

        /** The same with another number of containers. */
        public Lot of(int count) {
            return new Lot(new Boxes(count, boxes.dish(), boxes.eater()), filled, place, until, each);
        }
    }

    private BoxesLeft() {}

    public static BoxesLeft of(Book book) {
        var left = new BoxesLeft();
        book.entries().forEach(left::take);
        left.lots.sort(Comparator.comparing(Lot::until));
        return left;
    }

    /** What must be eaten first comes first. */
    public List<Lot> lots() {
        return List.copyOf(lots);
    }

    public List<Lot> of(String eater) {
        return lots.stream().filter(lot -> lot.boxes().eater().equals(eater)).toList();
    }

    /** Lines by which more were eaten than were there. */
    public List<Overdrawn> shortfalls() {
        return List.copyOf(shortfalls);
    }

    private void take(Entry entry) {
        if (entry.event() instanceof Filled filled) {
            lots.add(new Lot(filled.boxes(), entry.day(), filled.place(), filled.until(), filled.each()));
        } else if (entry.event() instanceof AteBoxes ate) {
            remove(entry, ate.boxes());
        } else if (entry.event() instanceof BoxesGone gone) {
            remove(entry, gone.boxes());
        }
    }

    private void remove(Entry entry, Boxes wanted) {
        List<Lot> there = lots.stream()
                .filter(lot -> lot.isOf(wanted))
                .sorted(Comparator.comparing((Lot lot) -> lot.until().isBefore(entry.day()))
                        .thenComparing(Lot::until))
                .toList();
        int missing = wanted.count();
        for (Lot lot : there) {
            int taken = Math.min(missing, lot.count());
            missing -= taken;
            lots.remove(lot);
            if (lot.count() > taken) {
                lots.add(lot.of(lot.count() - taken));
            }
        }
        if (missing > 0) {
            shortfalls.add(new Overdrawn(entry, says(wanted, wanted.count() - missing)));
        }
    }

    private static String says(Boxes wanted, int there) {
        return there == 0
                ? "there is no container of %s for %s left".formatted(wanted.dish(), wanted.eater())
                : "there %s only %s of %s for %s left"
                        .formatted(there == 1 ? "is" : "are", there, wanted.dish(), wanted.eater());
    }
}
