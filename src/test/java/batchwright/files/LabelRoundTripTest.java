package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Foods of USDA SR28, written as labels and read back, are what they were but for the rounding of labels. */
class LabelRoundTripTest {
    private static final List<CSVRecord> SR28 = Tables.rows(Path.of("src/test/resources/published/sr28_rows.csv"));
    private static final double KJ_PER_KCAL = 4.184;
    private static final double LEAST_FIGURE = 1e-3;
    private static final int SEEDS = 200;

    private final LabelLines lines = new LabelLines();

    /** Examples of 21 CFR 101.9(c) and FDA, Food Labeling Guide, Appendix H; by arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "calories, 4.9, 0",
        "calories, 47, 45",
        "calories, 52, 50",
        "calories, 56, 60",
        "fat, 0.4, 0",
        "fat, 0.7, 0.5",
        "fat, 3.3, 3.5",
        "fat, 6.4, 6",
        "sodium, 3, 0",
        "sodium, 62, 60",
        "sodium, 63, 65",
        "sodium, 143, 140",
        "sodium, 147, 150",
        "grams, 0.4, 0",
        "grams, 0.8, <1",
        "grams, 1.6, 2"
    })
    void the_rounding_of_this_test_is_the_published_one(String rule, double amount, String label) {
        LabelRounding rounded = switch (rule) {
            case "calories" -> LabelRounding.calories(amount);
            case "fat" -> LabelRounding.fat(amount);
            case "sodium" -> LabelRounding.sodium(amount);
            default -> LabelRounding.grams(amount);
        };
        assertThat(rounded.text()).isEqualTo(label);
    }

    /** Per 100 g in kJ, to 1 kJ, 0.1 g and 0.01 g of salt; carbohydrate without fibre. */
    @Test
    void as_a_european_label_in_kilojoules() {
        for (CSVRecord row : SR28) {
            double fibre = number(row, "FIBTG");
            String line = "a,a,other,eu,100 g,%s kJ,%s,,%s,,%s,%s,%s g salt,,,,"
                    .formatted(
                            rounded(number(row, "ENERC_KCAL") * KJ_PER_KCAL, 0),
                            rounded(number(row, "FAT"), 1),
                            rounded(Math.max(0, number(row, "CHOCDF") - fibre), 1),
                            row.get("FIBTG").isEmpty() ? "" : rounded(fibre, 1),
                            rounded(number(row, "PROCNT"), 1),
                            rounded(number(row, "NA") * 2.5 / 1000, 2));
            Food food = lines.food("a", line);

            close(food, Nutrient.ENERGY, row, 0.5 / KJ_PER_KCAL);
            close(food, Nutrient.FAT, row, 0.05);
            close(food, Nutrient.PROTEIN, row, 0.05);
            close(food, Nutrient.CARBOHYDRATE, row, 0.1);
            close(food, Nutrient.SODIUM, row, 2);
            assertThat(food.per100g().isComplete(Nutrient.CARBOHYDRATE))
                    .isEqualTo(!row.get("FIBTG").isEmpty());
        }
    }

    /** Per serving of 20 to 250 g, rounded as 21 CFR 101.9(c) has it; carbohydrate with fibre. */
    @Test
    void as_a_us_label_per_serving() {
        for (int seed = 0; seed < SEEDS; seed++) {
            RandomGenerator random =
                    RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
            CSVRecord row = SR28.get(random.nextInt(SR28.size()));
            int grams = random.nextInt(20, 251);
            double share = grams / 100.0;
            var energy = LabelRounding.calories(number(row, "ENERC_KCAL") * share);
            var fat = LabelRounding.fat(number(row, "FAT") * share);
            var carbohydrate = LabelRounding.grams(number(row, "CHOCDF") * share);
            var fibre = LabelRounding.grams(number(row, "FIBTG") * share);
            var protein = LabelRounding.grams(number(row, "PROCNT") * share);
            var sodium = LabelRounding.sodium(number(row, "NA") * share);
            Food food = lines.food(
                    "a",
                    "a,a,other,us,1 serving (%dg),%s kcal,%s,,%s,,%s,%s,%s mg sodium,,,,"
                            .formatted(
                                    grams,
                                    energy.text(),
                                    fat.text(),
                                    carbohydrate.text(),
                                    fibre.text(),
                                    protein.text(),
                                    sodium.text()));

            close(food, Nutrient.ENERGY, row, energy.mostOff() / share);
            close(food, Nutrient.FAT, row, fat.mostOff() / share);
            close(food, Nutrient.CARBOHYDRATE, row, carbohydrate.mostOff() / share);
            close(food, Nutrient.FIBRE, row, fibre.mostOff() / share);
            close(food, Nutrient.PROTEIN, row, protein.mostOff() / share);
            close(food, Nutrient.SODIUM, row, sodium.mostOff() / share);
            assertThat(food.per100g().isComplete(Nutrient.PROTEIN))
                    .isEqualTo(!protein.text().startsWith("<"));
        }
    }

    private static void close(Food food, Nutrient nutrient, CSVRecord row, double mostOff) {
        assertThat(food.per100g().get(nutrient).doubleValue())
                .as("%s of %s", nutrient, row.get("name"))
                .isCloseTo(number(row, nutrient.tagname()), within(mostOff + LEAST_FIGURE));
    }

    private static double number(CSVRecord row, String column) {
        return row.get(column).isEmpty() ? 0 : Double.parseDouble(row.get(column));
    }

    private static String rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
