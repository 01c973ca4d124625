package batchwright.files.foods;

import static batchwright.food.Nutrient.FIBRE;

/**
 * Whether an energy can be that of a label's protein, fat, carbohydrate and fibre. What the rules leave open widens it: fibre
 * by United States rules, and polyols.
 */
final class MacroEnergy {
    private static final double TOLERANCE = 0.15;

    private MacroEnergy() {}

    /** @param rounding how far they may be apart whatever the energy [kcal] */
    static boolean fits(Figures figures, double kcal, double rounding) {
        return miss(figures, kcal) <= Math.max(rounding, TOLERANCE * kcal);
    }

    /** How far the energy lies outside of what the macros may give [kcal]. */
    static double miss(Figures figures, double kcal) {
        double sum = figures.kcalOfMacros();
        double fibre = figures.fibreInside() ? 2 * figures.number(FIBRE) : 0;
        double polyols = figures.polyols().doubleValue();
        double least = sum - fibre - LabelFactors.CARBOHYDRATE_KCAL * polyols;
        double most = sum + fibre - (LabelFactors.CARBOHYDRATE_KCAL - LabelFactors.POLYOLS_MOST_KCAL) * polyols;
        return Math.max(0, Math.max(least - kcal, kcal - most));
    }
}
