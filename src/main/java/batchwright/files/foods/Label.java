package batchwright.files.foods;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;

/**
 * The figures of one label, as it states them.
 *
 * @param amounts for the weight of {@code per}, in the nutrients' units; sodium, whether the label says salt or sodium
 * @param polyols grams that are part of carbohydrate
 */
record Label(LabelKind kind, Per per, LabelEnergy energy, Map<Nutrient, LabelAmount> amounts, BigDecimal polyols) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Far finer than any label, yet a value stays readable. */
    private static final int DECIMALS = 4;

    Figures figures() {
        var values = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        amounts.forEach((nutrient, amount) -> values.put(nutrient, amount.amount()));
        values.put(Nutrient.ENERGY, energy.kcal());
        return new Figures(values, per.grams(), kind.fibreInside(), polyols);
    }

    /**
     * Per 100 g, carbohydrate with the fibre, as the catalogue has it. When a label leaves the fibre out of carbohydrate and
     * does not state it, carbohydrate is "at least".
     */
    Nutrients per100g(boolean fruitVeg) {
        Map<Nutrient, BigDecimal> values = new EnumMap<>(figures().values());
        var atLeast = EnumSet.noneOf(Nutrient.class);
        amounts.forEach((nutrient, amount) -> {
            if (amount.atLeast()) {
                atLeast.add(nutrient);
            }
        });
        if (!kind.fibreInside()) {
            LabelAmount fibre = amounts.getOrDefault(Nutrient.FIBRE, new LabelAmount(BigDecimal.ZERO, true));
            values.merge(Nutrient.CARBOHYDRATE, fibre.amount(), BigDecimal::add);
            if (fibre.atLeast()) {
                atLeast.add(Nutrient.CARBOHYDRATE);
            }
        }
        values.replaceAll((nutrient, value) -> per100g(value));
        values.put(Nutrient.FRUIT_VEG, fruitVeg ? HUNDRED : BigDecimal.ZERO);
        return Nutrients.of(values, atLeast);
    }

    private BigDecimal per100g(BigDecimal stated) {
        BigDecimal value = stated.multiply(HUNDRED)
                .divide(per.grams(), DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    /** Such as: label, EU, per 1 bar = 45 g. */
    String shown() {
        return "label, %s, per %s".formatted(kind, per.shown());
    }
}
