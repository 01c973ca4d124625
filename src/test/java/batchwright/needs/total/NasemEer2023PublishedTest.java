package batchwright.needs.total;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NasemEer2023PublishedTest {
    /** Test values of public transcriptions of the 2023 report, for 30 years, 170 cm, 70 kg; printed to two decimals. */
    @ParameterizedTest
    @CsvSource({"MALE, 1.40, 2520.17", "FEMALE, 1.70, 2475.55"})
    void matches_the_published_examples(Sex sex, double pal, double kcal) {
        assertThat(kcal(TestEater.body(sex, 70, 170, 30), pal)).isCloseTo(kcal, within(0.005));
    }

    /** Arithmetic on the printed coefficients, by category. */
    @ParameterizedTest
    @CsvSource({
        "MALE, 75, 175, 1.00, 2623.17", "MALE, 75, 175, 1.60, 2829.57",
        "MALE, 75, 175, 1.75, 3014.17", "MALE, 75, 175, 2.49, 3322.22",
        "FEMALE, 60, 163, 1.00, 2009.56", "FEMALE, 60, 163, 1.60, 2169.67",
        "FEMALE, 60, 163, 1.75, 2306.37", "FEMALE, 60, 163, 2.49, 2533.54"
    })
    void matches_the_arithmetic(Sex sex, double kg, double cm, double pal, double kcal) {
        assertThat(kcal(TestEater.body(sex, kg, cm, 30), pal)).isCloseTo(kcal, within(0.006));
    }

    /** Bands of the report: 1.00, 1.53, 1.68, 1.85 and 2.50, each belonging to the upper category. */
    @ParameterizedTest
    @CsvSource({
        "1.00, inactive", "1.5299, inactive", "1.53, low active", "1.6799, low active",
        "1.68, active", "1.8499, active", "1.85, very active", "2.4999, very active"
    })
    void takes_the_category_from_the_pal(double pal, String category) {
        assertThat(NasemEer2023.total(TestEater.body(Sex.MALE, 70, 170, 30), pal)
                        .orElseThrow()
                        .equation())
                .isEqualTo("NASEM 2023 EER, " + category);
    }

    @Test
    void says_nothing_outside_its_bands() {
        Body body = TestEater.body(Sex.MALE, 70, 170, 30);
        assertThat(NasemEer2023.total(body, 0.99)).isEmpty();
        assertThat(NasemEer2023.total(body, 2.50)).isEmpty();
    }

    @Test
    void is_for_adults_from_19() {
        assertThat(caveats(18.9)).containsExactly("made for ages from 19 years, not 18.9");
        assertThat(caveats(19)).isEmpty();
    }

    private static Iterable<String> caveats(double years) {
        return NasemEer2023.total(TestEater.body(Sex.FEMALE, 70, 170, years), 1.6)
                .orElseThrow()
                .caveats();
    }

    private static double kcal(Body body, double pal) {
        return NasemEer2023.total(body, pal).orElseThrow().perDay().kcal();
    }
}
