package batchwright.solve.mip;

/**
 * One constraint: lower <= sum of coefficients x columns <= upper.
 *
 * @param name for people
 * @param columns indices of the columns, each once
 * @param coefficients in the same order
 */
public record Row(String name, int[] columns, double[] coefficients, double lower, double upper) {
    double activity(double[] values) {
        double sum = 0;
        for (int k = 0; k < columns.length; k++) {
            sum += coefficients[k] * values[columns[k]];
        }
        return sum;
    }
}
