package batchwright.answer;

import batchwright.book.BoxesLeft;
import batchwright.book.Event.Boxes;
import batchwright.book.Event.Place;
import batchwright.book.Event.Weight;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a day in the kitchen is about.
 *
 * @param plan which holds on the day; empty when none was kept
 * @param eaters what each has to eat today and tomorrow, in the order of the plan
 * @param boxes containers that are left, what must go first in front
 * @param useUp foods at home that spoil soon
 * @param due other things to do today
 * @param notes what does not fit together, such as a dish that was renamed
 */
public record Today(
        LocalDate day,
        Optional<PlanOfDay> plan,
        List<ForEater> eaters,
        List<BoxesLeft.Lot> boxes,
        List<SpoilsSoon> useUp,
        List<Due> due,
        List<String> notes) {
    public Today {
        eaters = List.copyOf(eaters);
        boxes = List.copyOf(boxes);
        useUp = List.copyOf(useUp);
        due = List.copyOf(due);
        notes = List.copyOf(notes);
    }

    /** @param number of the day, from 1 */
    public record PlanOfDay(LocalDate cookingDay, int number, int days) {}

    /**
     * @param today empty when nothing is planned
     * @param eaten what the book says of today
     * @param over containers that are left and in no plan
     * @param lacking containers that the days after tomorrow lack
     */
    public record ForEater(
            String eater,
            Optional<DayByBook> today,
            Optional<DayByBook> tomorrow,
            Eaten eaten,
            List<BoxesLeft.Lot> over,
            List<Lacking> lacking) {
        public ForEater {
            over = List.copyOf(over);
            lacking = List.copyOf(lacking);
        }
    }

    /**
     * A planned day, and what of it can and has still to be eaten by the book.
     *
     * @param boxes still to be eaten, from where they are now
     * @param snacks still to be eaten
     * @param lacking containers that are not there any more
     * @param kcal of boxes and snacks, as far as it is known
     */
    public record DayByBook(
            EatersDay planned,
            List<PlannedBox> boxes,
            List<PlannedSnack> snacks,
            List<Lacking> lacking,
            BigDecimal kcal) {
        public DayByBook {
            boxes = List.copyOf(boxes);
            snacks = List.copyOf(snacks);
            lacking = List.copyOf(lacking);
        }
    }

    /**
     * @param kcal of the day so far, as far as it is known
     * @param anything whether the book has something that was eaten
     * @param closed whether it says that this was all
     */
    public record Eaten(BigDecimal kcal, boolean anything, boolean closed) {}

    /**
     * Containers that a day is planned with and that are not there.
     *
     * @param kcal of all of them, as planned
     */
    public record Lacking(LocalDate day, String dish, int count, BigDecimal kcal) {}

    /** @param food grams as purchased */
    public record SpoilsSoon(Weight food, LocalDate useBy) {}

    /**
     * Something to do.
     *
     * @param eater whose containers they are; empty when it is about the batch
     * @param from where they are
     */
    public record Due(Kind kind, String what, int count, Optional<String> eater, Optional<Place> from) {
        /** About a batch. */
        public static Due batch(Kind kind, String dish, int count) {
            return new Due(kind, dish, count, Optional.empty(), Optional.empty());
        }

        /** About containers of an eater. */
        public static Due boxes(Kind kind, Boxes boxes, Place from) {
            return new Due(kind, boxes.dish(), boxes.count(), Optional.of(boxes.eater()), Optional.of(from));
        }

        /** What is to be done. */
        public enum Kind {
            /** So many containers of a dish go into the freezer. */
            FREEZE,
            /** So many containers of a dish come out of the freezer for tomorrow. */
            THAW,
            /** A dish is cooked. */
            COOK,
            /** Containers of a dish are past their last day. */
            PAST
        }
    }
}
