package batchwright.files.foods;

import static batchwright.files.Lines.written;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts, energy and salt as labels print them. */
class LabelGrammarTest {
    private static final NumberRange FAT = NumberRange.of("fat", "0", "5000", "g", "");

    private final Problems problems = new Problems();

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "100 g, 100 g, 100",
        "30g, 30 g, 30",
        "100 ml = 103 g, 100 ml = 103 g, 103",
        "100ml (92g), 100ml = 92 g, 92",
        "1 l = 1030 g, 1 l = 1030 g, 1030",
        "25 cl=258 g, 25 cl = 258 g, 258"
    })
    void weights_and_volumes(String text, String shown, String grams) {
        assertThat(new PerGrammar(problems).read(written(text)))
                .contains(new Per(shown, new BigDecimal(grams), Optional.empty()));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1 bar = 45 g, bar, 45.00",
        "2 biscuits = 25 g, biscuit, 12.50",
        "2/3 cup (55g), cup, 82.50",
        "1 1/2 cups = 60 g, cup, 40.00",
        "0.5 pack = 100 g, pack, 200.00",
        "3 slices (90 g), slice, 30.00",
        "2 Glasses = 400 g, glass, 200.00",
        "3 pieces = 40 g, piece, 13.33",
        "1 glass = 200 g, glass, 200.00"
    })
    void household_measures(String text, String name, String grams) {
        assertThat(new PerGrammar(problems).read(written(text)).flatMap(Per::measure))
                .contains(new Per.Household(name, new BigDecimal(grams)));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "100",
                "100 ml",
                "1 bar",
                "bar = 45 g",
                "1 bar = 45",
                "1 bar = 45 kg",
                "0 bars = 45 g",
                "1/0 cup = 45 g",
                "30 g = 30 g",
                "100 ml = 10 g",
                "100 ml = 1030 g",
                "1 bar = 0 g",
                "1 bar = 9000 g",
                "1 bar = -45 g",
                "100,5 g",
                "1 bar = 45 g = 30 g",
                "()",
                "= g"
            })
    void amounts_of_food_that_are_refused(String text) {
        assertThat(new PerGrammar(problems).read(written(text))).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    /** 1 kcal = 4.184 kJ by definition of the thermochemical calorie. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "370 kcal, 370",
        "418.4 kJ, 100",
        "1550 kJ / 370 kcal, 370",
        "1550kJ/370kcal, 370",
        "370 kcal (1550 kJ), 370",
        "1550 KJ = 370 Kcal, 370",
        "0 kcal, 0",
        "120 Calories, 120",
        "120 Cal, 120",
        "Calories 120, 120",
        "120 calories / 502 kJ, 120"
    })
    void energies(String text, String kcal) {
        assertThat(new EnergyGrammar(problems).read(written(text)).map(LabelEnergy::kcal))
                .hasValueSatisfying(found -> assertThat(found).isEqualByComparingTo(kcal));
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "370",
                "370 cal",
                "1550 / 370",
                "1550 kJ / 370",
                "1550 kJ / 370 kJ",
                "kcal",
                "-5 kcal",
                "1 550 kJ",
                "1,55 MJ",
                "1e3 kJ",
                "1550 kJ 370 kcal 5"
            })
    void energies_that_are_refused(String text) {
        assertThat(new EnergyGrammar(problems).read(written(text))).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    /** kJ and kcal by Regulation (EU) 1169/2011, Annex XIV: 17 / 4, 37 / 9, 8 / 2 and 13 / 3 (acids) are the same energy. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1700 kJ / 400 kcal, true",
        "3700 kJ / 900 kcal, true",
        "800 kJ / 200 kcal, true",
        "1300 kJ / 300 kcal, true",
        "9 kJ / 2 kcal, true",
        "1550 kJ / 307 kcal, false",
        "155 kJ / 370 kcal, false",
        "370 kJ / 1550 kcal, false"
    })
    void both_units_are_compared(String text, boolean agree) {
        assertThat(new EnergyGrammar(problems).read(written(text)).orElseThrow().agrees(1))
                .isEqualTo(agree);
    }

    /**
     * Salt = sodium x 2.5, Regulation (EU) 1169/2011. That is sodium chloride: the masses of the atoms, 22.99 and 35.45, make
     * it 2.54.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1 g salt, 400",
        "0.25 g of salt, 100",
        "Salt 6 g, 2400",
        "120 mg sodium, 120",
        "sodium 0.12 g, 120",
        "250 mg salt, 100",
        "<0.01 g salt, 0"
    })
    void salt_and_sodium(String text, String mg) {
        assertThat(new SaltGrammar(problems).read(written(text)))
                .hasValueSatisfying(found -> assertThat(found.amount()).isEqualByComparingTo(mg));
        assertThat((22.99 + 35.45) / 22.99).isBetween(2.5, 2.55);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"0.9", "0.9 g", "120 mg", "salt", "0.9 salt", "0.9 kg salt", "-1 g salt", "0.9 g sugar"})
    void salt_that_is_refused(String text) {
        assertThat(new SaltGrammar(problems).read(written(text))).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @Test
    void less_than_a_limit_is_at_least_nothing() {
        assertThat(LabelAmount.read(written("<0.5"), FAT, problems)).contains(new LabelAmount(BigDecimal.ZERO, true));
        assertThat(LabelAmount.read(written("less than 1 g"), FAT, problems))
                .contains(new LabelAmount(BigDecimal.ZERO, true));
        assertThat(LabelAmount.read(written("3.5 g"), FAT, problems))
                .contains(new LabelAmount(new BigDecimal("3.5"), false));
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"-1", "1,5", "3 mg", "trace", ">2", "<", "5001", "3.5 g salt"})
    void amounts_that_are_refused(String text) {
        assertThat(LabelAmount.read(written(text), FAT, problems)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }
}
