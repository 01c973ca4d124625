package batchwright.report.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 21 CFR 101.9(c) and FDA's rounding table (A Food Labeling Guide, appendix H), each band from edge to edge. The table: calories
 * below 5 are 0, up to 50 to the nearest 5, above to the nearest 10; fat below 0.5 g is 0, below 5 g to the nearest 0.5 g, else 1 g;
 * carbohydrate, fibre and protein below 0.5 g are 0, below 1 g "less than 1 g", else to the nearest 1 g.
 */
class UsLabelRoundingPublishedTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "4.9, 0",
        "4.999, 0",
        "5, 5",
        "7.4, 5",
        "7.5, 10",
        "47, 45",
        "47.5, 50",
        "49.9, 50",
        "50, 50",
        "50.1, 50",
        "52, 50",
        "54.9, 50",
        "55, 60",
        "56, 60",
        "64.9, 60",
        "65, 70",
        "988.8, 990",
        "1004.9, 1000",
        "1005, 1010"
    })
    void calories(BigDecimal kcal, String printed) {
        assertThat(UsLabelRounding.calories(kcal)).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 g", "0.4, 0 g", "0.499, 0 g", "0.5, 0.5 g", "0.7, 0.5 g", "0.74, 0.5 g", "0.75, 1 g", "3.3, 3.5 g",
                "4.7, 4.5 g",
        "4.75, 5 g", "4.99, 5 g", "5, 5 g", "5.4, 5 g", "5.5, 6 g", "6.4, 6 g", "18.49, 18 g", "18.5, 19 g",
                "100, 100 g"
    })
    void fat(BigDecimal grams, String printed) {
        assertThat(UsLabelRounding.fat(grams)).isEqualTo(printed);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 g",
        "0.4, 0 g",
        "0.499, 0 g",
        "0.5, less than 1 g",
        "0.8, less than 1 g",
        "0.999, less than 1 g",
        "1, 1 g",
        "1.4, 1 g",
        "1.5, 2 g",
        "1.6, 2 g",
        "34.4, 34 g",
        "34.5, 35 g",
        "100, 100 g"
    })
    void carbohydrate_fibre_and_protein(BigDecimal grams, String printed) {
        assertThat(UsLabelRounding.grams(grams)).isEqualTo(printed);
    }
}
