package batchwright.book;

import batchwright.book.Event.AteBoxes;
import batchwright.book.Event.AteFood;
import batchwright.book.Event.AteOut;
import batchwright.book.Event.Mark;
import batchwright.book.Event.Marked;
import batchwright.book.Event.NotLogged;
import batchwright.book.Event.NothingElse;
import batchwright.book.Event.Weighed;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the book says of an eater's day.
 *
 * @param kg weighed; the last one of several
 * @param plannedKcal weighed out in this kitchen: containers and foods
 * @param unplannedKcal eaten elsewhere, estimated
 * @param complete whether the book says that this was all; otherwise the intake of the day is not known
 */
public record LoggedDay(
        LocalDate day, OptionalDouble kg, double plannedKcal, double unplannedKcal, boolean complete, Set<Mark> marks) {
    /** The days of an eater of which something is known, in order. Other days are missing, not zero. */
    public static List<LoggedDay> of(Book book, String eater) {
        var days = new TreeMap<LocalDate, Gathered>();
        book.entries()
                .forEach(entry -> eaterOf(entry.event())
                        .filter(eater::equals)
                        .ifPresent(mine ->
                                days.computeIfAbsent(entry.day(), Gathered::new).add(entry.event())));
        return days.values().stream().map(Gathered::day).toList();
    }

    /** Whom the event is about; empty when it is about the kitchen, or about no one's eating, weight or state. */
    private static Optional<String> eaterOf(Event event) {
        if (event instanceof Weighed weighed) {
            return Optional.of(weighed.eater());
        } else if (event instanceof AteBoxes ate) {
            return Optional.of(ate.eater());
        } else if (event instanceof AteFood ate) {
            return Optional.of(ate.eater());
        } else if (event instanceof AteOut ate) {
            return Optional.of(ate.eater());
        } else if (event instanceof NothingElse all) {
            return Optional.of(all.eater());
        } else if (event instanceof NotLogged not) {
            return Optional.of(not.eater());
        } else if (event instanceof Marked marked) {
            return Optional.of(marked.eater());
        }
        return Optional.empty();
    }

    private static final class Gathered {
        private final LocalDate day;
        private final Set<Mark> marks = EnumSet.noneOf(Mark.class);
        private OptionalDouble kg = OptionalDouble.empty();
        private double planned;
        private double unplanned;
        private boolean all;
        private boolean unknown;

        Gathered(LocalDate day) {
            this.day = day;
        }

        void add(Event event) {
            if (event instanceof Weighed weighed) {
                kg = OptionalDouble.of(weighed.kg().doubleValue());
            } else if (event instanceof AteBoxes ate) {
                plan(ate.kcal());
            } else if (event instanceof AteFood ate) {
                plan(ate.kcal());
            } else if (event instanceof AteOut ate) {
                unplanned += ate.kcal().doubleValue();
            } else if (event instanceof NothingElse) {
                all = true;
            } else if (event instanceof NotLogged) {
                unknown = true;
            } else if (event instanceof Marked marked) {
                marks.add(marked.mark());
            }
        }

        private void plan(Optional<BigDecimal> kcal) {
            planned += kcal.map(BigDecimal::doubleValue).orElse(0.0);
            unknown |= kcal.isEmpty();
        }

        LoggedDay day() {
            return new LoggedDay(day, kg, planned, unplanned, all && !unknown, Set.copyOf(marks));
        }
    }
}
