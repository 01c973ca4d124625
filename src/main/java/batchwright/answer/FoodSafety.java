package batchwright.answer;

import batchwright.food.CoreTemperature;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Citation;
import batchwright.plan.Batch;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The usual advice on keeping cooked food; local food-safety advice goes first. */
public final class FoodSafety {
    private static final Citation LEFTOVERS = new Citation("USDA FSIS, Leftovers and Food Safety");
    private static final Citation COOLING =
            new Citation("USDA FSIS, Leftovers and Food Safety; FDA Food Code 3-501.14, for catering");
    private static final Citation HOLDING = new Citation("FDA Food Code, hot and cold holding");
    private static final Citation RAW = new Citation("USDA advice on raw food in the fridge, from memory");
    private static final String FREEZE = ", so freeze its containers if you follow that.";
    private static final String EAT = "; this dish does not freeze, so eat it within that day if you follow that.";
    private static final String FREEZE_OR_EAT =
            ": if you follow that, freeze its containers, and eat within that day what does not freeze.";
    private static final int GRAMS_TO_KG = 3;
    private static final Citation LONG =
            new Citation("USDA FSIS, Leftovers and Food Safety; 4-5 days: common practice");

    private FoodSafety() {}

    public static List<Caution> of(Session session) {
        return of(session, Freezing.anyOf(session));
    }

    /** @param freezes whether some containers are frozen */
    public static List<Caution> of(Session session, boolean freezes) {
        var foods = new LinkedHashSet<Food>();
        session.batches().forEach(batch -> foods.addAll(batch.ingredients().keySet()));
        List<Caution> advice = new ArrayList<>();
        raw(foods).ifPresent(advice::add);
        advice.add(Caution.warn(
                "cool_within_2_hours",
                "Cool what you cooked in shallow containers and have it in the fridge within 2 hours, 1 hour where it is above 32 C"
                        + " (90 F). Catering kitchens go from 57 to 21 C within 2 hours and to 5 C within 6 hours in all.",
                COOLING));
        hotBoxes(session).ifPresent(advice::add);
        advice.add(Caution.warn(
                "keep_hot_or_cold",
                "What waits to be eaten stays hot, at 57 C (135 F) or more, or cold, at 5 C (41 F) or less.",
                HOLDING));
        advice.add(Caution.warn(
                "keep_cold",
                "Keep the fridge at or below 4 C (40 F) and eat cooked food within 3-4 days, the cooking day being day 1; freeze"
                        + " what is for later at -18 C (0 F).",
                LEFTOVERS));
        session.batches().stream()
                .map(Batch::dish)
                .flatMap(dish -> longFridge(dish).stream())
                .forEach(advice::add);
        if (freezes) {
            advice.add(Caution.warn(
                    "thaw_in_fridge",
                    "Thaw frozen containers in the fridge, " + Thawing.ADVICE
                            + ", not on the table; eat them within a day and do not freeze them again.",
                    LEFTOVERS));
        }
        advice.add(Caution.warn(
                "reheat",
                "Reheat once, until steaming, 74 C (165 F) inside. When food smells or looks off, or was out for long, throw it"
                        + " away.",
                LEFTOVERS));
        rice(foods, FREEZE_OR_EAT).ifPresent(advice::add);
        session.batches().forEach(batch -> advice.addAll(HazardCautions.of(batch.dish())));
        SaltToAdd.ofBatches(session).ifPresent(advice::add);
        advice.add(localAdvice());
        return advice;
    }

    /** What is particular to this dish; the usual advice goes with a plan. */
    public static List<Caution> of(Dish dish) {
        List<Caution> advice = new ArrayList<>();
        longFridge(dish).ifPresent(advice::add);
        advice.addAll(HazardCautions.of(dish));
        rice(dish.foods(), dish.freezes() ? FREEZE : EAT).ifPresent(advice::add);
        advice.add(localAdvice());
        return advice;
    }

    private static Optional<Caution> raw(Collection<Food> foods) {
        CoreTemperatures raw = CoreTemperatures.of(foods);
        boolean spoilsFast = raw.holdsAny(CoreTemperature.POULTRY, CoreTemperature.MINCED_MEAT, CoreTemperature.FISH);
        if (!spoilsFast && !raw.holdsAny(CoreTemperature.MEAT_IN_ONE_PIECE)) {
            return Optional.empty();
        }
        return Optional.of(Caution.warn(
                "raw_in_fridge",
                "Raw poultry, minced meat and fish keep 1-2 days in the fridge, raw meat in one piece 3-5 days; freeze what you"
                        + " cook later. Keep them, their board and their knife away from what is eaten as it is.",
                RAW));
    }

    private static Optional<Caution> longFridge(Dish dish) {
        return dish.fridgeDays() <= Dish.ADVISED_FRIDGE_DAYS
                ? Optional.empty()
                : Optional.of(Caution.warn(
                        "fridge_days_long." + dish.id(),
                        dish.name() + " keeps " + dish.fridgeDays()
                                + " days by its file. Five days are a habit of the trade"
                                + " (common practice); published home advice is 3-4, so eat or freeze it by day "
                                + Dish.ADVISED_FRIDGE_DAYS + ".",
                        LONG));
    }

    /** @param then what follows for somebody who keeps to the British advice */
    private static Optional<Caution> rice(Collection<Food> foods, String then) {
        Hazard rice = Hazard.of("rice");
        return rice.in(foods).isEmpty()
                ? Optional.empty()
                : Optional.of(HazardCautions.of(rice, rice.code(), Map.of("then", then)));
    }

    /** What a fridge at home can take at once. */
    private static Optional<Caution> hotBoxes(Session session) {
        Hazard rule = Hazard.of("hot_boxes");
        BigDecimal kg = CookedWeight.of(session).movePointLeft(GRAMS_TO_KG);
        return kg.compareTo(rule.amount()) <= 0
                ? Optional.empty()
                : Optional.of(HazardCautions.of(
                        rule,
                        rule.code(),
                        Map.of("amount", kg.setScale(1, RoundingMode.HALF_UP).toPlainString())));
    }

    private static Caution localAdvice() {
        return Caution.warn(
                "local_advice",
                "This is general advice: the food-safety authority where you live goes first.",
                new Citation("common practice"));
    }
}
