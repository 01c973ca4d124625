package batchwright.needs.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Hall2007Test {
    /** Forbes GB. Nutr Rev 1987;45:225-231: FFM = 10.4 ln(FM) + 14.2 kg, the curve that the form follows (10.4 checked). */
    private static double forbesFatFreeKg(double fatKg) {
        return 10.4 * Math.log(fatKg) + 14.2;
    }

    /** From one point of Forbes' curve to another: weight changes by fat and fat-free mass together. */
    @ParameterizedTest
    @CsvSource({"20, 30", "30, 20", "5, 40", "40, 5", "25, 25.5"})
    void follows_the_curve_of_forbes(double fatKg, double laterFatKg) {
        double change = laterFatKg - fatKg + forbesFatFreeKg(laterFatKg) - forbesFatFreeKg(fatKg);
        assertThat(Hall2007.fatChangeKg(new Mass(fatKg), change)).isCloseTo(laterFatKg - fatKg, within(1e-9));
    }

    /** Arithmetic on the form with Lambert's W function, done apart from this program, to 0.001 kg. */
    @ParameterizedTest
    @CsvSource({"30, -10, -7.163", "20, -5, -3.192", "15, 5, 3.066", "40, -20, -15.079"})
    void agrees_with_the_form_of_the_paper(double fatKg, double changeKg, double fatChangeKg) {
        assertThat(Hall2007.fatChangeKg(new Mass(fatKg), changeKg)).isCloseTo(fatChangeKg, within(0.0006));
    }

    @Test
    void there_and_back_is_nothing() {
        double lost = Hall2007.fatChangeKg(new Mass(22), -9);
        assertThat(Hall2007.fatChangeKg(new Mass(22 + lost), 9)).isCloseTo(-lost, within(1e-9));
    }

    /** However much is lost, some fat is left; however lean the body, the change is shared. */
    @ParameterizedTest
    @CsvSource({"1, -50", "0.5, -200", "60, -100", "0.5, 100", "100, 200", "20, 0"})
    void extremes_have_an_answer(double fatKg, double changeKg) {
        double fat = Hall2007.fatChangeKg(new Mass(fatKg), changeKg);
        double after = fatKg + fat;
        assertThat(after).isPositive();
        assertThat(fat + 10.4 * Math.log(after / fatKg)).isCloseTo(changeKg, within(1e-6));
    }
}
