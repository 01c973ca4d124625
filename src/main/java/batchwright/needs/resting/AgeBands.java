package batchwright.needs.resting;

/**
 * Coefficients by age as FAO/WHO/UNU and Henry print them. Printed bands touch; here 18 to under 30, 30 to under 60, 60 and
 * over. Younger people get the first band: the equation's caveat says that it was not made for them.
 */
public record AgeBands<T>(T from18, T from30, T from60) {
    private static final double SECOND_BAND_YEARS = 30;
    private static final double THIRD_BAND_YEARS = 60;

    T at(double ageYears) {
        if (ageYears >= THIRD_BAND_YEARS) {
            return from60;
        }
        return ageYears >= SECOND_BAND_YEARS ? from30 : from18;
    }
}
