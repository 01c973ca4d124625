package batchwright.book;

import batchwright.book.Event.Holds;
import batchwright.book.Event.Weight;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A plan as it was kept: what was to be cooked, eaten and bought, by short names. Days are counted from 1, the first cooking day.
 *
 * @param kept what it was when it was kept
 * @param work the order of work of each cooking session; none in a plan that was kept without it
 */
public record KeptPlan(
        LocalDate cookingDay,
        Kept kept,
        int days,
        List<EatersDay> eatersDays,
        List<KeptBatch> batches,
        List<KeptPurchase> shopping,
        List<KeptWork> work) {
    public KeptPlan {
        eatersDays = List.copyOf(eatersDays);
        batches = List.copyOf(batches);
        shopping = List.copyOf(shopping);
        work = List.copyOf(work);
    }

    /**
     * @param number of the plans kept for one cooking day the one with the highest number counts; from 1
     * @param bookLine the last line of the book then: what was bought before counted as stock already; 0 where that is not known
     * @param budgetMinor in minor units; empty without one
     */
    public record Kept(int number, int bookLine, OptionalLong budgetMinor) {}

    /** By which it is told from others: 2026-11-30-1. */
    public String key() {
        return cookingDay + "-" + kept.number();
    }

    /** @param kcal of all that is planned */
    public record EatersDay(
            int day, String eater, List<PlannedBox> boxes, List<PlannedSnack> snacks, BigDecimal kcal) {}

    /**
     * Containers of a dish on a day.
     *
     * @param before whose they are, when they were there before the plan
     */
    public record PlannedBox(String dish, int count, boolean frozen, Optional<FromBefore> before) {
        /** The same with another number of containers. */
        public PlannedBox with(int other) {
            return new PlannedBox(dish, other, frozen, before);
        }

        /** @param eater who eats them */
        public String of(String eater) {
            return before.map(FromBefore::of).orElse(eater);
        }

        /** Whether the plan fills them. */
        public boolean isNew() {
            return before.isEmpty();
        }
    }

    /**
     * @param of for whom they were filled
     * @param kcal of one
     */
    public record FromBefore(String of, BigDecimal kcal) {}

    /** @param always whether the eater eats it every day anyway */
    public record PlannedSnack(String food, String measure, int count, BigDecimal grams, boolean always) {}

    /**
     * @param day on which it is cooked
     * @param ingredients raw edible grams
     * @param swaps what is not as the dish is written
     * @param dayBefore what is to be done the evening before
     */
    public record KeptBatch(
            int day,
            String dish,
            List<Weight> ingredients,
            List<KeptFill> fills,
            List<KeptSwap> swaps,
            List<String> dayBefore) {
        public KeptBatch {
            ingredients = List.copyOf(ingredients);
            fills = List.copyOf(fills);
            swaps = List.copyOf(swaps);
            dayBefore = List.copyOf(dayBefore);
        }
    }

    /** @param by empty when the food is left out */
    public record KeptSwap(String food, Optional<String> by) {}

    /**
     * @param eater empty when for nobody in particular
     * @param each what a container holds
     * @param millilitres the room that one takes
     */
    public record KeptFill(
            Optional<String> eater, int containers, List<KeptPart> parts, Holds each, BigDecimal millilitres) {}

    /** How much of a part goes into one container. */
    public record KeptPart(String part, int rawGrams, int cookedGrams) {}

    /**
     * @param day of the cooking session for which it is bought
     * @param grams of one pack, as purchased
     * @param costMinor of all of them, in minor units
     * @param pack what the shelf says; both empty where that was not kept
     */
    public record KeptPurchase(
            int day, String food, int packs, BigDecimal grams, long costMinor, String shop, String pack) {
        /**
         * The same when it was bought as planned.
         *
         * @param digits decimals of the currency
         */
        public Event.Bought bought(int digits) {
            return new Event.Bought(
                    packs,
                    grams.stripTrailingZeros().scale() < 0 ? grams.setScale(0) : grams,
                    food,
                    Optional.of(BigDecimal.valueOf(costMinor, digits)),
                    Optional.empty());
        }

        public BigDecimal allGrams() {
            return grams.multiply(BigDecimal.valueOf(packs));
        }
    }

    /** The day of the cooking session that a day is cooked for in. */
    public int sessionOf(int day) {
        return batches.stream()
                .mapToInt(KeptBatch::day)
                .filter(first -> first <= day)
                .max()
                .orElse(1);
    }

    /** The containers of a dish that an eater has on a day. */
    public Optional<KeptFill> fill(String dish, String eater, int day) {
        return batches.stream()
                .filter(batch -> batch.dish().equals(dish) && batch.day() == sessionOf(day))
                .flatMap(batch -> batch.fills().stream())
                .filter(fill -> fill.eater().filter(eater::equals).isPresent())
                .findFirst();
    }

    public LocalDate date(int day) {
        return cookingDay.plusDays(day - 1L);
    }

    /** Which day of the plan a date is; outside of 1 to {@link #days} it is none. */
    public int dayOf(LocalDate date) {
        return (int) (date.toEpochDay() - cookingDay.toEpochDay()) + 1;
    }

    public boolean covers(LocalDate date) {
        return dayOf(date) >= 1 && dayOf(date) <= days;
    }

    public List<EatersDay> on(LocalDate date) {
        return eatersDays.stream().filter(d -> d.day() == dayOf(date)).toList();
    }

    public Optional<EatersDay> on(LocalDate date, String eater) {
        return on(date).stream().filter(d -> d.eater().equals(eater)).findFirst();
    }
}
