package batchwright.answer;

import batchwright.book.BoxesLeft;
import batchwright.book.Event.Weight;
import batchwright.book.KeptPlan.EatersDay;
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
     * @param eaten of what the book says, energy today [kcal]
     * @param closed whether the book says that this was all
     */
    public record ForEater(
            String eater, Optional<EatersDay> today, Optional<EatersDay> tomorrow, BigDecimal eaten, boolean closed) {}

    /** @param food grams as purchased */
    public record SpoilsSoon(Weight food, LocalDate useBy) {}

    /** Something to do. */
    public record Due(Kind kind, String what, int count) {
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
