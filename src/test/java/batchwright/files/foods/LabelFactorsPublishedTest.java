package batchwright.files.foods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.files.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The factors of labels beside the regulation and beside a food table. */
class LabelFactorsPublishedTest {
    /** Regulation (EU) 1169/2011, Annex XIV, in kcal/g; the last line is the sum of 10, 5, 20 and 0 g by arithmetic. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "protein,            1, 0, 0,  0, 4",
        "fat,                0, 1, 0,  0, 9",
        "carbohydrate,       0, 0, 1,  0, 4",
        "fibre,              0, 0, 0,  1, 2",
        "a food of all,     10, 5, 20, 0, 165"
    })
    void factors(String what, double protein, double fat, double carbohydrate, double fibre, double kcal) {
        assertThat(LabelFactors.kcal(protein, fat, carbohydrate, fibre)).isEqualTo(kcal);
    }

    /**
     * Energy of USDA SR28 comes from factors made for each food. Over 382 everyday foods of it of at least 20 kcal the general
     * factors are 0.8 % low on average and 4.6 % off in the mean, and 7 foods (18 in 1000) are more than 15 % off, with acids,
     * alcohol or much fibre. The foods here are some of those.
     */
    @Test
    void general_factors_are_near_the_energies_of_a_food_table() {
        var off = new ArrayList<Double>();
        for (CSVRecord food : Tables.rows(Path.of("src/test/resources/published/sr28_rows.csv"))) {
            double kcal = number(food, "ENERC_KCAL");
            double fibre = number(food, "FIBTG");
            if (kcal >= 20) {
                double sum = LabelFactors.kcal(
                        number(food, "PROCNT"), number(food, "FAT"), number(food, "CHOCDF") - fibre, fibre);
                off.add(sum / kcal - 1);
            }
        }
        assertThat(off).hasSizeGreaterThan(150);
        assertThat(mean(off)).isCloseTo(-0.008, within(0.012));
        assertThat(mean(off.stream().map(Math::abs).toList())).isCloseTo(0.046, within(0.01));
        assertThat((double) off.stream().filter(o -> Math.abs(o) > 0.15).count() / off.size())
                .as("7 of 382 in the source of this band; the catalogue has more cocoa, vinegar, wine and beer")
                .isLessThanOrEqualTo(0.03);
    }

    private static double number(CSVRecord row, String column) {
        String text = row.get(column);
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElseThrow();
    }
}
