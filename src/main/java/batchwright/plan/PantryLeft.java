package batchwright.plan;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a session leaves at home. Earlier dates are used first; what spoils before the last day, in batches only. */
public final class PantryLeft {
    /** Less than this is a rounding error. */
    private static final BigDecimal LEAST_GRAMS = new BigDecimal("0.000001");

    private PantryLeft() {}

    /**
     * What will be at home on a later day, by food in the order of the catalogue: what is left of the pantry and still good, and
     * what is left of packs, unless the food is perishable: nobody knows how long an opened pack of it keeps.
     */
    public static Map<Food, List<Lot>> on(LocalDate day, Session session) {
        Map<Food, List<Lot>> left = new LinkedHashMap<>();
        for (Food food : session.kitchen().foods().values()) {
            List<Lot> lots = new ArrayList<>(lots(session, food));
            if (!food.perishable()) {
                session.purchase(food).map(Purchase::leftGrams).map(Lot::of).ifPresent(lots::add);
            }
            List<Lot> good = lots.stream()
                    .filter(lot -> lot.keepsUntil(day))
                    .filter(lot -> lot.grams().compareTo(LEAST_GRAMS) > 0)
                    .toList();
            if (!good.isEmpty()) {
                left.put(food, good);
            }
        }
        return left;
    }

    /** What is left of the lots of a food that could be used on the cooking day; a lot that is used up holds 0 g. */
    static List<Lot> lots(Session session, Food food) {
        Kitchen kitchen = session.kitchen();
        LocalDate lastDay = session.request().lastDay();
        BigDecimal fromPantry =
                session.purchase(food).map(Purchase::fromPantryGrams).orElse(BigDecimal.ZERO);
        BigDecimal lasting = kitchen.pantryGrams(food, lastDay);
        BigDecimal cooked = cooked(session, food).min(kitchen.pantryGrams(food).subtract(lasting));
        List<Lot> lots = kitchen.lotsOf(food).stream()
                .filter(lot -> lot.keepsUntil(kitchen.cookingDay()))
                .sorted(Comparator.comparing(lot -> lot.useBy().orElse(LocalDate.MAX)))
                .toList();
        List<Lot> left = new ArrayList<>(
                over(lots.stream().filter(lot -> !lot.keepsUntil(lastDay)).toList(), cooked));
        left.addAll(over(lots.stream().filter(lot -> lot.keepsUntil(lastDay)).toList(), fromPantry.subtract(cooked)));
        return left;
    }

    /** Grams as purchased that go into batches. */
    private static BigDecimal cooked(Session session, Food food) {
        return session.batches().stream()
                .map(batch -> batch.ingredients().getOrDefault(food, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(food.edibleShare(), MathContext.DECIMAL64);
    }

    /** What remains of lots when so much is taken, in their order. */
    private static List<Lot> over(List<Lot> lots, BigDecimal taken) {
        List<Lot> over = new ArrayList<>();
        BigDecimal left = taken;
        for (Lot lot : lots) {
            BigDecimal here = left.min(lot.grams());
            over.add(new Lot(lot.grams().subtract(here), lot.useBy()));
            left = left.subtract(here);
        }
        return over;
    }
}
