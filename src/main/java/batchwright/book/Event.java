package batchwright.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Something that happened on a day. Foods, dishes and eaters are short names. */
public sealed interface Event {
    /** @param kg of body weight */
    record Weighed(String eater, BigDecimal kg) implements Event {}

    /**
     * @param count of packs
     * @param grams of one pack, as purchased
     * @param price of all of them, in units of the kitchen's currency
     * @param useBy the last day on which it may be used
     */
    record Bought(int count, BigDecimal grams, String food, Optional<BigDecimal> price, Optional<LocalDate> useBy)
            implements Event {}

    /** @param foods what went in, raw edible grams */
    record Cooked(String dish, List<Weight> foods) implements Event {
        public Cooked {
            foods = List.copyOf(foods);
        }
    }

    /**
     * @param boxes for whom
     * @param until the last day on which they may be eaten
     * @param each what one holds
     */
    record Filled(Boxes boxes, Place place, LocalDate until, Holds each) implements Event {}

    /** @param kcal of all of them, where it is known */
    record AteBoxes(String eater, Boxes boxes, Optional<BigDecimal> kcal) implements Event {}

    /** @param food edible grams */
    record AteFood(String eater, Weight food, Optional<BigDecimal> kcal) implements Event {}

    /** Something that did not come from this kitchen. */
    record AteOut(String eater, BigDecimal kcal) implements Event {}

    /** All that was eaten on the day is in the book. */
    record NothingElse(String eater) implements Event {}

    /** What was eaten on the day is not in the book, or not all of it. */
    record NotLogged(String eater) implements Event {}

    /** @param thrown else it was given away */
    record BoxesGone(boolean thrown, Boxes boxes) implements Event {}

    /**
     * Containers that went from the freezer into the fridge, or the other way.
     *
     * @param to where they wait now
     * @param until the last day on which they may be eaten; where nothing is said, that of {@link BoxKeeping}
     */
    record Moved(Boxes boxes, Place to, Optional<LocalDate> until) implements Event {}

    /**
     * @param thrown else it was given away
     * @param food grams as purchased
     */
    record FoodGone(boolean thrown, Weight food) implements Event {}

    /** A stock-take: all that there is of a food, in grams as purchased. */
    record Counted(Weight food, Optional<LocalDate> useBy) implements Event {}

    /** Something about an eater that explains their weight. */
    record Marked(String eater, Mark mark) implements Event {}

    /** @param kcal a day that hold the weight, from which the target goes from now on */
    record Adopted(String eater, BigDecimal kcal) implements Event {}

    /** So many grams of a food. */
    record Weight(String food, BigDecimal grams) {}

    /** Containers of one dish for one eater. */
    record Boxes(int count, String dish, String eater) {}

    /** What a container holds, as far as it is known. */
    record Holds(Optional<BigDecimal> kcal, Optional<BigDecimal> proteinG) {
        public static final Holds UNKNOWN = new Holds(Optional.empty(), Optional.empty());
    }

    /** Where containers wait. */
    enum Place {
        FRIDGE,
        FREEZER;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What may be said of an eater's day. */
    enum Mark {
        ILL,
        TRAVEL,
        /** The first day of taking it. */
        CREATINE,
        /** The first day without it. */
        CREATINE_STOPPED,
        /** The first day of a cycle. */
        CYCLE
    }
}
