package batchwright.report.cooking;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked out by hand: grams / grams of one, to the nearest fraction of the measuring set. */
class KitchenMeasureTest {
    private static final Food FOOD = new Food(
            "food", "food", "other", Optional.empty(), "food", Nutrients.NONE, BigDecimal.ZERO, Set.of(), false);

    /** @param measures such as: cup 192, tbsp 12 */
    private static Optional<String> text(String measures, String grams) {
        List<Measure> all = new ArrayList<>();
        for (String measure : measures.split(", ", -1)) {
            int blank = measure.lastIndexOf(' ');
            var one = new BigDecimal(measure.substring(blank + 1));
            all.add(new Measure(FOOD, measure.substring(0, blank), one, 0, "invented"));
        }
        return KitchenMeasure.of(all, new BigDecimal(grams)).map(KitchenMeasure::text);
    }

    @ParameterizedTest(name = "{0} g of {1}")
    @CsvSource({
        "27, 'tbsp 13.5, tsp 4.5', 2 tbsp",
        "9, 'tbsp 13.5, tsp 4.5', 2 tsp",
        "8, 'tbsp 13.5, tsp 4.5', 1 3/4 tsp",
        "817, cup 192, 4 1/4 cups",
        "96, cup 192, 1/2 cup",
        "64, cup 192, 1/3 cup",
        "128, cup 192, 2/3 cup",
        "144, cup 192, 3/4 cup",
        "192, cup 192, 1 cup",
        "2000, cup 192, about 10 cups",
        "1350, cup of penne 95, 14 cups of penne",
        "400, 'cup 192, tbsp 12', about 2 cups",
        "24, 'cup 192, tbsp 12', 2 tbsp",
        "200, 'medium 50, large 60', 4 medium",
        "120, 'medium 50, large 60', 2 large",
        "93, large 50, about 2 large",
        "25, large 50, 1/2 large",
        "45, clove 3, 15 cloves",
        "600, 'medium 18, cup of slices 70', 8 1/2 cups of slices",
        "1400, 'medium 908, cup of shreds 70', 1 1/2 medium",
    })
    void the_measure_a_cook_would_take(String grams, String measures, String text) {
        assertThat(text(measures, grams)).contains(text);
    }

    @ParameterizedTest(name = "{0} g of {1}")
    @CsvSource({
        "75, cup 192, no fraction is within 10 %",
        "10, cup 192, far below 1/4",
        "0, cup 192, nothing",
        "0.004, tsp 5, next to nothing",
        "1000, tsp 5, 200 spoons are counted by nobody",
        "592, cup 16, 37 cups are counted by nobody",
        "454, pound 453.6, a weight says no more than the grams",
        "20000000000000, cup 1, beyond counting"
    })
    void none_where_none_is_of_use(String grams, String measures, String why) {
        assertThat(text(measures, grams)).as(why).isEmpty();
    }

    /** 3 % either way is exact enough, 10 % too far: 97 to 103 g and 90.91 to 111 g are one cup of 100 g. */
    @Test
    void says_about_from_three_per_cent_and_nothing_from_ten() {
        assertThat(text("piece 100", "97.1")).contains("1 piece");
        assertThat(text("piece 100", "103")).contains("1 piece");
        assertThat(text("piece 100", "103.2")).contains("about 1 piece");
        assertThat(text("piece 100", "91")).contains("about 1 piece");
        assertThat(text("piece 100", "111")).contains("about 1 piece");
        assertThat(text("piece 100", "90.8")).isEmpty();
        assertThat(text("piece 100", "112")).isEmpty();
    }

    /** Whatever is said is within 10 % of the grams, in ASCII, for every amount of several measures. */
    @Test
    void what_is_said_is_never_far_off() {
        var measures = List.of(
                new Measure(FOOD, "cup", new BigDecimal("237"), 0, ""),
                new Measure(FOOD, "tbsp", new BigDecimal("14.8"), 0, ""),
                new Measure(FOOD, "tsp", new BigDecimal("4.93"), 0, ""),
                new Measure(FOOD, "medium", new BigDecimal("61"), 0, ""));
        int said = 0;
        for (int tenths = 1; tenths < 30_000; tenths += 7) {
            BigDecimal grams = BigDecimal.valueOf(tenths, 1);
            Optional<KitchenMeasure> found = KitchenMeasure.of(measures, grams);
            if (found.isPresent()) {
                said++;
                double of = found.get().twelfths()
                        / 12.0
                        * found.get().measure().grams().doubleValue();
                assertThat(of / grams.doubleValue()).as("%s g", grams).isBetween(0.9, 1.1);
                assertThat(found.get().text()).matches("(about )?(\\d+|\\d/\\d|\\d+ \\d/\\d) [a-z]+");
            }
        }
        assertThat(said).isGreaterThan(4000);
    }
}
