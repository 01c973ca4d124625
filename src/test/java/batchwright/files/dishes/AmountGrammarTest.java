package batchwright.files.dishes;

import static batchwright.files.Lines.written;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FilesInMemory;
import batchwright.files.KitchenReader;
import batchwright.files.foods.MeasureNames;
import batchwright.files.profile.EaterReader;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Amounts in a mix as cooks write them. Of the invented food a cup weighs 90 g, a tbsp 15 g and a half 100.5 g. */
class AmountGrammarTest {
    private static final Food PENNE = new Food(
            "penne", "penne", "grain", Optional.empty(), "penne", Nutrients.NONE, BigDecimal.ZERO, Set.of(), false);

    private final Problems problems = new Problems();
    private final MeasureNames names = new MeasureNames(problems);
    private final AmountGrammar grammar = new AmountGrammar(names, problems);

    @BeforeEach
    void measures() {
        names.add(measure("cup of penne", "90"));
        names.add(measure("tbsp", "15"));
        names.add(measure("medium", "60"));
        names.add(measure("half", "100.5"));
    }

    private static Measure measure(String name, String grams) {
        return new Measure(PENNE, name, new BigDecimal(grams), 0, "invented");
    }

    private Optional<AmountGrammar.Amount> read(String text) {
        return grammar.read(Optional.of(PENNE), written(text));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "150 g, 150",
        "150g, 150",
        "0.5 g, 0.5",
        "1.2 kg, 1200",
        "1/2 kg, 500",
        "2 lb, 907.18",
        "1/2 lb, 226.8",
        "6 oz, 170.1",
        "½ kg, 500",
    })
    void weights(String text, BigDecimal grams) {
        assertThat(read(text)).hasValueSatisfying(amount -> {
            assertThat(amount.grams()).isEqualByComparingTo(grams);
            assertThat(amount.measured()).isEmpty();
        });
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "2 tbsp, 30, 2 tbsp",
        "2tbsp, 30, 2 tbsp",
        "2 tablespoons, 30, 2 tbsp",
        "2 Tbsp, 30, 2 tbsp",
        "2 tbs, 30, 2 tbsp",
        "2 TBSP, 30, 2 tbsp",
        "1½ Cups of penne, 135, 1 1/2 cups of penne",
        "1 ½ tbsp, 22.5, 1 1/2 tbsp",
        "⅔ cup of penne, 60, 2/3 cup of penne",
        "1/2 cup of penne, 45, 1/2 cup of penne",
        "1 1/2 cups of penne, 135, 1 1/2 cups of penne",
        "1  1/2 cup of penne, 135, 1 1/2 cups of penne",
        "1.5 cups of penne, 135, 1.5 cups of penne",
        "2/3 cup of penne, 60, 2/3 cup of penne",
        "3 medium, 180, 3 medium",
        "1 half, 100.5, 1 half",
        "3 halves, 301.5, 3 halves",
        "1 3/16 tbsp, 17.8125, 1 3/16 tbsp"
    })
    void measures(String text, BigDecimal grams, String measured) {
        assertThat(read(text)).hasValueSatisfying(amount -> {
            assertThat(amount.grams()).isEqualByComparingTo(grams);
            assertThat(amount.measured()).contains(measured);
        });
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "",
                "g",
                "a cup",
                "100",
                "0 g",
                "-5 g",
                "1e2 g",
                "1,5 kg",
                "100.5.1 g",
                "0 tbsp",
                "1/0 tbsp",
                "0/2 tbsp",
                "5/4 tbsp",
                "1 4/4 tbsp",
                "1/17 tbsp",
                "-1/2 tbsp",
                "1/2",
                "2 cups",
                "2 spoons",
                "2 grams",
                "300 lb",
                "5 stone",
                "2000 tbsp",
                "999 1/2 kg",
                "2 tbsp!",
                "½½ tbsp"
            })
    void what_is_refused_once(String text) {
        assertThat(read(text)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @Test
    void an_unknown_measure_names_those_there_are_and_the_nearest() {
        read("2 cups");

        assertThat(problems.list().get(0).render())
                .contains(
                        "there is no measure of penne called \"cups\"",
                        "expected g, kg, cup of penne, tbsp, medium or half");
        read("2 tbps");
        assertThat(problems.list().get(1).render()).contains("nearest: \"tbsp\"");
    }

    /** The same names serve what an eater always eats, where only whole measures are counted. */
    @Test
    void what_is_always_eaten_is_read_alike() {
        FilesInMemory files = FilesInMemory.base();
        String profile = files.text("profiles/cook.yaml");
        files.with("profiles/cook.yaml", profile.replace("1 cup whole_milk", "2 cups whole_milk"));

        assertThat(files.problems()).isEmpty();
        var kitchen = KitchenReader.read(files, FilesInMemory.DAY).value();
        var always = EaterReader.read(files, "profiles/cook.yaml", kitchen)
                .value()
                .orElseThrow()
                .wishes()
                .always();
        assertThat(always).singleElement().satisfies(a -> {
            assertThat(a.count()).isEqualTo(2);
            assertThat(a.measure().name()).isEqualTo("cup");
        });
    }

    /** What was said about a line of the table is not said again where the food is used. */
    @Test
    void a_food_whose_measures_have_an_error_is_not_complained_about_twice() {
        names.addBroken("penne");

        assertThat(read("2 bowls")).isEmpty();
        assertThat(problems.list()).isEmpty();
    }

    @Test
    void without_its_food_only_the_form_is_checked() {
        assertThat(grammar.read(Optional.empty(), written("2 bowls"))).isEmpty();
        assertThat(grammar.read(Optional.empty(), written("100 g"))).isPresent();
        assertThat(problems.list()).isEmpty();
        assertThat(grammar.read(Optional.empty(), written("bowl"))).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @Test
    void a_piece_may_be_a_measure_of_whole_grams() {
        assertThat(PortionGrammar.inPieces(written("1 medium"), PENNE, grammar, problems)
                        .map(PortionGrammar::stepGrams))
                .contains(60);
        assertThat(PortionGrammar.inPieces(written("50 g"), PENNE, grammar, problems)
                        .map(PortionGrammar::stepGrams))
                .contains(50);
        assertThat(problems.list()).isEmpty();

        assertThat(PortionGrammar.inPieces(written("1 half"), PENNE, grammar, problems))
                .isEmpty();
        assertThat(PortionGrammar.inPieces(written("1 bowl"), PENNE, grammar, problems))
                .isEmpty();
        assertThat(PortionGrammar.inPieces(written("100 tbsp"), PENNE, grammar, problems))
                .isEmpty();
        assertThat(problems.errors()).isEqualTo(3);
    }
}
