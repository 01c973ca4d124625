package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Lot;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a session leaves at home for a later one [g as purchased], by the last day on which it may be used. */
record LeftAtHome(Evidence evidence, LocalDate on) {
    /** Stands for no date. */
    static final LocalDate EVER = LocalDate.MAX;

    /** Of a lot as it is at home: what is good on the day, by date. */
    static Map<LocalDate, BigDecimal> byDate(List<Lot> lots) {
        Map<LocalDate, BigDecimal> byDate = new TreeMap<>();
        lots.forEach(lot -> byDate.merge(lot.useBy().orElse(EVER), lot.grams(), BigDecimal::add));
        return byDate;
    }

    /** Lots in the order of their dates give what the session takes; packs of what keeps add what they were not needed for. */
    Map<LocalDate, BigDecimal> of(Food food) {
        LocalDate first = evidence.day(1);
        LocalDate last = evidence.day(evidence.request().days());
        BigDecimal toTake = evidence.fromPantry(food);
        BigDecimal toCook = evidence.asPurchased(food, evidence.eaten().cooked().of(food));
        Map<LocalDate, BigDecimal> left = new TreeMap<>();
        List<Lot> lots = evidence.request().kitchen().lotsOf(food).stream()
                .sorted(Comparator.comparing(LeftAtHome::date))
                .toList();
        for (Lot lot : lots) {
            if (date(lot).isBefore(first)) {
                continue;
            }
            boolean forCookingOnly = date(lot).isBefore(last);
            BigDecimal taken = lot.grams().min(toTake).min(forCookingOnly ? toCook : toTake);
            toTake = toTake.subtract(taken);
            toCook = forCookingOnly ? toCook.subtract(taken) : toCook;
            if (!date(lot).isBefore(on)) {
                left.merge(date(lot), lot.grams().subtract(taken), BigDecimal::add);
            }
        }
        if (!food.perishable()) {
            BigDecimal used = evidence.asPurchased(food, evidence.eaten().all().of(food));
            BigDecimal ofPacks = evidence.bought(food).subtract(used.subtract(evidence.fromPantry(food)));
            left.merge(EVER, ofPacks, BigDecimal::add);
        }
        return left;
    }

    private static LocalDate date(Lot lot) {
        return lot.useBy().orElse(EVER);
    }
}
