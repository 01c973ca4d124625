package batchwright.needs.total;

import batchwright.person.Body;

/**
 * The form that IOM 2005 gives its equations for total energy: a + b A + PA (c W + d H) [kcal/d]
 * A age [years], W weight [kg], H height [m].
 */
record IomFormula(double kcal, double kcalPerYear, double kcalPerKg, double kcalPerMetre, Factors pa) {
    /** PA, the factor of activity for each {@link IomCategory}; no PAL. */
    record Factors(double sedentary, double lowActive, double active, double veryActive) {
        double of(IomCategory category) {
            return switch (category) {
                case SEDENTARY -> sedentary;
                case LOW_ACTIVE -> lowActive;
                case ACTIVE -> active;
                case VERY_ACTIVE -> veryActive;
            };
        }
    }

    double kcal(Body body, IomCategory category) {
        return kcal
                + kcalPerYear * body.ageYears()
                + pa.of(category)
                        * (kcalPerKg * body.weight().kg()
                                + kcalPerMetre * body.height().metres());
    }
}
