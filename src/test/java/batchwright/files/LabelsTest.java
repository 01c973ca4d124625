package batchwright.files;

import static batchwright.food.Nutrient.CARBOHYDRATE;
import static batchwright.food.Nutrient.ENERGY;
import static batchwright.food.Nutrient.FAT;
import static batchwright.food.Nutrient.FIBRE;
import static batchwright.food.Nutrient.POTASSIUM;
import static batchwright.food.Nutrient.PROTEIN;
import static batchwright.food.Nutrient.SODIUM;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Foods from labels: both conventions, any weight, and what a label does not say. */
class LabelsTest {
    private final LabelLines lines = new LabelLines();

    /** The same crispbread: as a European label per 100 g, as a US label per serving of 25 g. */
    @Test
    void both_conventions_give_the_same_food() {
        Food european = lines.food("a", "a,a,grain,eu,100 g,332 kcal,1.6,0.4,60,1.2,16,10,1 g salt,360,40,3.2,");
        Food american =
                lines.food("a", "a,a,grain,us,2 slices (25 g),83 kcal,0.4,0.1,19,0.3,4,2.5,100 mg sodium,90,10,0.8,");

        assertThat(european.per100g()).isEqualTo(american.per100g());
        assertThat(european.per100g().get(CARBOHYDRATE)).isEqualByComparingTo("76");
        assertThat(european.per100g().get(SODIUM)).isEqualByComparingTo("400");
        assertThat(european.per100g().isComplete(CARBOHYDRATE)).isTrue();
    }

    @Test
    void a_volume_counts_with_its_weight() {
        Nutrients drink = lines.food("a", "a,a,other,eu,200 ml = 206 g,90 kcal,3,0.4,13,7,1.6,2,0.2 g salt,,,,")
                .per100g();

        assertThat(drink.get(FAT)).isEqualByComparingTo("1.4563");
        assertThat(drink.get(ENERGY)).isEqualByComparingTo("43.6893");
    }

    @Test
    void an_empty_cell_is_unknown_and_fibre_unknown_makes_carbohydrate_at_least() {
        Nutrients skyr = lines.food("a", "a,a,dairy,eu,100 g,62 kcal,0.2,0.1,4.0,4.0,,11,,,,,")
                .per100g();

        assertThat(skyr.isKnown(FIBRE)).isFalse();
        assertThat(skyr.isComplete(FIBRE)).isFalse();
        assertThat(skyr.isKnown(CARBOHYDRATE)).isTrue();
        assertThat(skyr.isComplete(CARBOHYDRATE)).isFalse();
        assertThat(skyr.get(CARBOHYDRATE)).isEqualByComparingTo("4.0");
        assertThat(skyr.isKnown(SODIUM)).isFalse();
        assertThat(skyr.isKnown(POTASSIUM)).isFalse();
        assertThat(skyr.isComplete(PROTEIN)).isTrue();
        Nutrients sum = skyr.plus(skyr);
        assertThat(sum.isComplete(CARBOHYDRATE)).isFalse();
        assertThat(sum.get(CARBOHYDRATE)).isEqualByComparingTo("8.0");
        assertThat(skyr.times(BigDecimal.TEN).isComplete(CARBOHYDRATE)).isFalse();
    }

    @Test
    void on_a_us_label_carbohydrate_is_whole_without_the_fibre() {
        Nutrients food = lines.food("a", "a,a,dairy,us,100 g,62 kcal,0.2,0.1,4.0,4.0,,11,,,,,")
                .per100g();

        assertThat(food.isComplete(CARBOHYDRATE)).isTrue();
        assertThat(food.isComplete(FIBRE)).isFalse();
    }

    @Test
    void less_than_a_limit_is_at_least_nothing() {
        Nutrients food = lines.food("a", "a,a,dairy,eu,100 g,62 kcal,<0.5,<0.1,4.0,4.0,<0.5,11,<0.01 g salt,,,,")
                .per100g();

        assertThat(food.get(FAT)).isZero();
        assertThat(food.isKnown(FAT)).isTrue();
        assertThat(food.isComplete(FAT)).isFalse();
        assertThat(food.isComplete(CARBOHYDRATE)).isFalse();
        assertThat(food.isComplete(SODIUM)).isFalse();
    }

    @Test
    void a_piece_becomes_a_measure_and_perhaps_a_snack() {
        Kitchen kitchen = lines.read("bar,protein bar,sweet,eu,2 bars = 90 g,334 kcal,11,4,28,4,8,30,0.5 g salt,,,,2\n")
                .value()
                .orElseThrow();
        Food bar = Optional.ofNullable(kitchen.foods().get("bar")).orElseThrow();

        assertThat(kitchen.measuresOf(bar))
                .containsExactly(new Measure(bar, "bar", new BigDecimal("45.00"), 2, "label"));
        assertThat(kitchen.snackMeasures()).extracting(Measure::food).contains(bar);
        assertThat(bar.description()).isEqualTo("label, EU, per 2 bars = 90 g");
    }

    @Test
    void dishes_shops_and_measures_may_name_it() {
        var files = FilesInMemory.base();
        files.with(
                        "foods/labels.csv",
                        LabelLines.HEADER.replace("snack_max", "snack_max,allergens")
                                + "skyr,skyr,dairy,eu,100 g,62 kcal,0.2,0.1,4.0,4.0,,11,,,,,,milk\n")
                .with("foods/measures.csv", files.text("foods/measures.csv") + "skyr,cup,240,2,weighed\n")
                .with(
                        "foods/shop.csv",
                        files.text("foods/shop.csv") + "skyr,corner market,tub,450,2.99,USD,2026-10-15,invented\n")
                .with("profiles/pantry.csv", files.text("profiles/pantry.csv") + "skyr,200,\n")
                .with("foods/yields.csv", files.text("foods/yields.csv") + "skyr,baked,0.9,memory,\n")
                .with(
                        "foods/dishes/oat_bowl.yaml",
                        files.text("foods/dishes/oat_bowl.yaml").replace("whole_milk: 180 g", "skyr: 180 g, baked"));

        assertThat(files.problems()).isEmpty();
    }

    /**
     * Energy worked out by the rules of labels is silent, also where those leave something open: fibre on a US label from 0 to 4
     * kcal/g (21 CFR 101.9), polyols, rounding. The figures are by arithmetic.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "US bran, fibre 0 kcal/g    | a,a,grain,us,30 g,62 kcal,1,0,24,5,13,3,,,,,",
                "US bran, 4-4-9             | a,a,grain,us,30 g,117 kcal,1,0,24,5,13,3,,,,,",
                "EU, fibre 2 kcal/g         | a,a,grain,eu,100 g,292 kcal,5,1,25,1,43,16,,,,,",
                "small, 15 kcal off is much | a,a,vegetable,eu,100 g,14 kcal,0.2,0,2.2,1.5,1.2,0.8,,,,,",
                "US, all rounded            | a,a,other,us,1 tbsp = 15 g,20 kcal,1.5,0,3,2,0,0,,,,,",
                "oil                        | a,a,fat_oil,eu,100 ml = 92 g,3404 kJ / 828 kcal,92,13,0,0,0,0,,,,,",
                "US oil                     | a,a,fat_oil,us,1 tbsp (14 g),120 kcal,14,2,0,0,0,0,,,,,",
                "water                      | a,a,other,eu,100 ml = 100 g,0 kJ / 0 kcal,0,0,0,0,0,0,,,,,"
            })
    void right_labels_are_silent(String why, String line) {
        assertThat(lines.read(line + "\n").problems()).as(why).isEmpty();
    }

    /** Each slip in a right label, with the word that names it. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "kJ written as kcal     | a,a,dairy,eu,100 g,262 kcal,0.2,0.1,4,4,0,11,,,,,            | kJ written as kcal",
                "kcal written as kJ     | a,a,grain,eu,100 g,370 kJ,7,1.3,58,1,10,13,,,,,              | kcal written as kJ",
                "US label called eu     | a,a,fruit,eu,100 g,52 kcal,0.7,0,11.9,4.4,6.5,1.2,,,,,        | label us",
                "EU label called us     | a,a,grain,us,100 g,246 kcal,4.3,0.6,25,0.4,24,15.6,,,,,      | label eu",
                "energy of 100 g        | a,a,sweet,eu,1 bar = 45 g,364 kcal,5.5,2,14,2,4,15,,,,,       | for 100 g",
                "energy of the serving  | a,a,sweet,eu,1 bar = 45 g,75 kcal,5.5,2,14,2,4,15,,,,,        | for 100 g",
                "point of carbohydrate  | a,a,grain,eu,100 g,345 kcal,1.7,0.3,6.2,1.2,17,9.5,,,,,       | 62 g",
                "point of the energy    | a,a,grain,eu,100 g,37.0 kcal,7,1.3,58,1,10,13,,,,,            | ten times",
                "fibre without energy   | a,a,grain,eu,100 g,199 kcal,4.3,0.6,25,0.4,40,15.6,,,,,       | little or no energy",
                "alcohol not stated     | a,a,other,eu,100 ml = 99 g,83 kcal,0,0,2.6,0.8,0,0.1,,,,,      | alcohol"
            })
    void the_likely_slip_is_named(String slip, String line, String word) {
        assertThat(lines.read(line + "\n").problems()).as(slip).singleElement().satisfies(problem -> {
            assertThat(problem.isError()).isFalse();
            assertThat(problem.expected()).contains(word);
        });
    }
}
