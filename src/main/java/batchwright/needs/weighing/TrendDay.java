package batchwright.needs.weighing;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One day of a picture.
 *
 * @param weighedKg what the scale said, left out or not
 * @param trendKg weight without the noise of weighing, by all weighings before and after
 * @param trendSdKg its standard deviation
 * @param holds intake that holds the weight, as it was known that evening
 */
public record TrendDay(
        LocalDate date, OptionalDouble weighedKg, double trendKg, double trendSdKg, DayIntake intake, KcalBand holds) {
    public double leastKg() {
        return trendKg - KcalBand.Z * trendSdKg;
    }

    public double mostKg() {
        return trendKg + KcalBand.Z * trendSdKg;
    }
}
