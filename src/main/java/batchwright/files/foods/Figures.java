package batchwright.files.foods;

import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a row states of a weight of food, as it states it.
 *
 * @param values in the nutrients' units; what is not stated is not there
 * @param grams the weight that they are of
 * @param fibreInside whether carbohydrate holds the fibre
 * @param polyols grams that are part of carbohydrate but give less energy
 */
record Figures(Map<Nutrient, BigDecimal> values, BigDecimal grams, boolean fibreInside, BigDecimal polyols) {
    /** As in the catalogue. */
    static Figures per100g(Map<Nutrient, BigDecimal> values) {
        return new Figures(values, BigDecimal.valueOf(100), true, BigDecimal.ZERO);
    }

    boolean states(Nutrient... nutrients) {
        return values.keySet().containsAll(List.of(nutrients));
    }

    /** Zero when it is not stated. */
    BigDecimal get(Nutrient nutrient) {
        return values.getOrDefault(nutrient, BigDecimal.ZERO);
    }

    double number(Nutrient nutrient) {
        return get(nutrient).doubleValue();
    }

    /** Protein, fat, carbohydrate and fibre [g], each counted once. */
    BigDecimal macros() {
        BigDecimal sum = get(Nutrient.PROTEIN).add(get(Nutrient.FAT)).add(get(Nutrient.CARBOHYDRATE));
        return fibreInside ? sum : sum.add(get(Nutrient.FIBRE));
    }

    /** Salt that has this much sodium [g]: 2.5 times as much, Regulation (EU) 1169/2011, Annex I. */
    BigDecimal saltOfSodium() {
        return get(Nutrient.SODIUM).multiply(new BigDecimal("0.0025"));
    }

    /** Carbohydrate without fibre [g]. */
    double availableCarbohydrate() {
        return number(Nutrient.CARBOHYDRATE) - (fibreInside ? number(Nutrient.FIBRE) : 0);
    }

    /** By the factors of labels; polyols count as carbohydrate. */
    double kcalOfMacros() {
        return LabelFactors.kcal(
                number(Nutrient.PROTEIN), number(Nutrient.FAT), availableCarbohydrate(), number(Nutrient.FIBRE));
    }

    Figures with(Nutrient nutrient, BigDecimal value) {
        var changed = new EnumMap<>(values);
        changed.put(nutrient, value);
        return new Figures(changed, grams, fibreInside, polyols);
    }

    /** The same figures read by the other convention of carbohydrate. */
    Figures readOtherwise() {
        return new Figures(values, grams, !fibreInside, polyols);
    }
}
