package batchwright.book;

import batchwright.book.Event.AteBoxes;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.BoxesGone;
import batchwright.book.Event.Filled;
import batchwright.book.Event.Holds;
import batchwright.book.Event.Moved;
import batchwright.book.Event.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The containers that are there, by what the book says of filling and eating. Those that must go first are taken first, those past their last day last. */
public final class BoxesLeft {
    private final List<Lot> lots = new ArrayList<>();
    private final List<Overdrawn> shortfalls = new ArrayList<>();
    private final List<Overdrawn> notToFreeze = new ArrayList<>();

    /**
     * Containers that are alike.
     *
     * @param boxes how many are left
     * @param thawed whether they came out of the freezer
     */
    public record Lot(Boxes boxes, LocalDate filled, Place place, LocalDate until, Holds each, boolean thawed) {
        public boolean isOf(Boxes wanted) {
            return boxes.dish().equals(wanted.dish()) && boxes.eater().equals(wanted.eater());
        }

        public int count() {
            return boxes.count();
        }

        /** The same with another number of containers. */
        public Lot of(int count) {
            return new Lot(new Boxes(count, boxes.dish(), boxes.eater()), filled, place, until, each, thawed);
        }
    }

    private BoxesLeft() {}

    public static BoxesLeft of(Book book) {
        var left = new BoxesLeft();
        book.entries().forEach(left::take);
        left.lots.sort(Comparator.comparing(Lot::until).thenComparing(Lot::filled));
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

    /** Lines by which something was frozen that was thawed before, or past its last day. */
    public List<Overdrawn> notToFreeze() {
        return List.copyOf(notToFreeze);
    }

    private void take(Entry entry) {
        if (entry.event() instanceof Filled filled) {
            lots.add(new Lot(filled.boxes(), entry.day(), filled.place(), filled.until(), filled.each(), false));
        } else if (entry.event() instanceof AteBoxes ate) {
            remove(entry, ate.boxes());
        } else if (entry.event() instanceof BoxesGone gone) {
            remove(entry, gone.boxes());
        } else if (entry.event() instanceof Moved moved) {
            move(entry, moved);
        }
    }

    /** Containers of the other place change it; what was thawed is frozen again only where nothing else is there, and that is told. */
    private void move(Entry entry, Moved moved) {
        Place from = moved.to() == Place.FREEZER ? Place.FRIDGE : Place.FREEZER;
        LocalDate until = moved.until().orElse(BoxKeeping.moved(entry.day(), moved.to()));
        List<Lot> taken = remove(entry, moved.boxes(), lot -> lot.place() == from, " in the " + from.word());
        if (moved.to() == Place.FREEZER) {
            taken.forEach(lot -> lookBeforeFreezing(entry, lot));
        }
        taken.forEach(lot -> lots.add(new Lot(
                lot.boxes(), lot.filled(), moved.to(), until, lot.each(), lot.thawed() || moved.to() == Place.FRIDGE)));
    }

    private void lookBeforeFreezing(Entry entry, Lot lot) {
        String what = lot.boxes().dish() + " for " + lot.boxes().eater();
        if (lot.thawed()) {
            notToFreeze.add(new Overdrawn(entry, what + " was thawed before"));
        } else if (lot.until().isBefore(entry.day())) {
            notToFreeze.add(new Overdrawn(entry, what + " was past its last day, " + lot.until()));
        }
    }

    private void remove(Entry entry, Boxes wanted) {
        remove(entry, wanted, lot -> true, "");
    }

    /**
     * @param where which may be taken
     * @param in the same in words
     * @return what was taken
     */
    private List<Lot> remove(Entry entry, Boxes wanted, Predicate<Lot> where, String in) {
        boolean thawedLast = !in.isEmpty();
        List<Lot> went = new ArrayList<>();
        List<Lot> there = lots.stream()
                .filter(lot -> lot.isOf(wanted) && where.test(lot))
                .sorted(Comparator.comparing((Lot lot) -> lot.until().isBefore(entry.day()))
                        .thenComparing(lot -> thawedLast && lot.thawed())
                        .thenComparing(Lot::until)
                        .thenComparing(Lot::filled))
                .toList();
        int missing = wanted.count();
        for (Lot lot : there) {
            int taken = Math.min(missing, lot.count());
            if (taken == 0) {
                continue;
            }
            missing -= taken;
            went.add(lot.of(taken));
            lots.remove(lot);
            if (lot.count() > taken) {
                lots.add(lot.of(lot.count() - taken));
            }
        }
        if (missing > 0) {
            shortfalls.add(new Overdrawn(entry, says(wanted, wanted.count() - missing, in)));
        }
        return went;
    }

    private static String says(Boxes wanted, int there, String in) {
        return there == 0
                ? "there is no container of %s for %s left%s".formatted(wanted.dish(), wanted.eater(), in)
                : "there %s only %s of %s for %s left%s"
                        .formatted(there == 1 ? "is" : "are", there, wanted.dish(), wanted.eater(), in);
    }
}
