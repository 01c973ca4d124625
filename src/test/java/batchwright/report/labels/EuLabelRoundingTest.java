package batchwright.report.labels;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.report.labels.LabelRounding.Figure;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors: Regulation (EU) 1169/2011, Annex XIV. Bands: the Commission's guidance on tolerances, December 2012, table of rounding
 * (from memory): from 10 g to the nearest 1 g; below 10 g and above 0.5 g to the nearest 0.1 g; 0.5 g and less 0.
 */
class EuLabelRoundingTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0 g",
        "0.4, 0 g",
        "0.5, 0 g",
        "0.51, 0.5 g",
        "0.55, 0.6 g",
        "1, 1.0 g",
        "9.94, 9.9 g",
        "9.95, 10 g",
        "10, 10 g",
        "10.4, 10 g",
        "10.5, 11 g",
        "100.49, 100 g"
    })
    void grams(BigDecimal grams, String printed) {
        assertThat(EuLabelRounding.grams(grams)).isEqualTo(printed);
    }

    /** P 10, C 20, F 5 g: 165 kcal; 17 x 30 + 37 x 5 = 695 kJ, not 690.4. Carbohydrate by difference has the fibre in it. */
    @Test
    void energy_is_by_the_factors_and_not_converted() {
        var nutrients = Nutrients.of(Map.of(
                Nutrient.ENERGY, BigDecimal.valueOf(999),
                Nutrient.PROTEIN, BigDecimal.valueOf(10),
                Nutrient.CARBOHYDRATE, BigDecimal.valueOf(20),
                Nutrient.FAT, BigDecimal.valueOf(5)));

        assertThat(new EuLabelRounding().of(nutrients)).contains(new Figure("energy", "695 kJ / 165 kcal"));
    }

    /** 4 g of 24 g are fibre: 8 kJ and 2 kcal each, and not counted as carbohydrate. */
    @Test
    void fibre_is_taken_out_of_carbohydrate() {
        var nutrients = Nutrients.of(
                Map.of(Nutrient.CARBOHYDRATE, BigDecimal.valueOf(24), Nutrient.FIBRE, BigDecimal.valueOf(4)));

        assertThat(new EuLabelRounding().of(nutrients))
                .contains(
                        new Figure("energy", "372 kJ / 88 kcal"),
                        new Figure("carbohydrate", "20 g"),
                        new Figure("fibre", "4.0 g"));
    }
}
