package batchwright.needs.intakes;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.needs.TestEater;
import batchwright.needs.intakes.Intake.Standing;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A day beside published amounts: a woman of 40 years (iron 18 mg, calcium 1000 mg, vitamin A 700 ug; UL 45, 2500, 3000). */
class IntakeTest {
    private static final List<Reference> REFERENCES =
            TestEater.of(TestEater.body(Sex.FEMALE, 70, 170, 40)).needs().references();

    /** 90 % of 18 mg is 16.2; per cent are cut off. */
    @ParameterizedTest
    @CsvSource({"16.2, WITHIN, 90", "16.1999, SHORT, 89", "45, WITHIN, 250", "45.0001, ABOVE, 250", "0, SHORT, 0"})
    void iron_from_its_recommendation_to_its_limit(String mg, Standing standing, int percent) {
        Intake iron = intake(Nutrient.IRON, Nutrients.of(Map.of(Nutrient.IRON, new BigDecimal(mg))));

        assertThat(iron.standing()).isEqualTo(standing);
        assertThat(iron.percent()).contains(percent);
        assertThat(iron.complete()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"16.1999, MAYBE_SHORT", "16.2, WITHIN", "45.0001, ABOVE"})
    void an_amount_that_may_be_more_is_never_called_short(String mg, Standing standing) {
        Intake iron =
                intake(Nutrient.IRON, Nutrients.of(Map.of(Nutrient.IRON, new BigDecimal(mg)), Set.of(Nutrient.IRON)));

        assertThat(iron.standing()).isEqualTo(standing);
        assertThat(iron.complete()).isFalse();
    }

    /** The UL of magnesium (350 mg) is below what is recommended and counts no food. */
    @Test
    void food_is_never_above_the_limit_of_magnesium() {
        Intake magnesium = intake(Nutrient.MAGNESIUM, day("MG", 2000));

        assertThat(magnesium.standing()).isEqualTo(Standing.WITHIN);
        assertThat(magnesium.counted()).isEmpty();
    }

    @Test
    void vitamin_a_above_its_limit_may_be_carotene() {
        assertThat(intake(Nutrient.VITAMIN_A, day("VITA_RAE", 3000)).standing()).isEqualTo(Standing.WITHIN);
        assertThat(intake(Nutrient.VITAMIN_A, day("VITA_RAE", 3001)).standing()).isEqualTo(Standing.MAYBE_ABOVE);
    }

    @Test
    void sodium_is_never_short_because_salt_is_added() {
        assertThat(intake(Nutrient.SODIUM, day("NA", 100)).standing()).isEqualTo(Standing.WITHIN);
        assertThat(intake(Nutrient.SODIUM, day("NA", 2300)).standing()).isEqualTo(Standing.WITHIN);
        assertThat(intake(Nutrient.SODIUM, day("NA", 2301)).standing()).isEqualTo(Standing.ABOVE);
    }

    @Test
    void all_sugar_is_compared_with_nothing() {
        Intake sugar = intake(Nutrient.SUGAR, day("SUGAR", 400));

        assertThat(sugar.standing()).isEqualTo(Standing.NOT_COMPARED);
        assertThat(sugar.percent()).isEmpty();
    }

    /**
     * Folic acid is what enriching adds. USDA SR28 has pasta and white rice both enriched (20120: folate 237 ug, DFE 391; 20044: 231,
     * 387) and not (20420: 18; 20444: 8), so enriching adds 219 and 223 ug. Whole ug in the source: within 1.5 / 0.7.
     */
    @ParameterizedTest
    @CsvSource({"237, 391, 18", "231, 387, 8"})
    void folic_acid_is_what_enriching_adds(int folate, int dfe, int withoutEnriching) {
        BigDecimal added =
                Counts.FOLIC_ACID.of(folate(folate, dfe), Nutrient.FOLATE_DFE).orElseThrow();

        assertThat(added)
                .isBetween(
                        new BigDecimal(folate - withoutEnriching - 2), new BigDecimal(folate - withoutEnriching + 2));
    }

    /** DFE - folate = 0.7 x folic acid: 1000 ug of it are 700. Folate that grew there is never too much. */
    @Test
    void only_folic_acid_counts_for_the_limit_of_folate() {
        assertThat(intake(Nutrient.FOLATE_DFE, folate(5000, 5000)).standing()).isEqualTo(Standing.WITHIN);
        assertThat(intake(Nutrient.FOLATE_DFE, folate(1000, 1700)).standing()).isEqualTo(Standing.WITHIN);
        Intake more = intake(Nutrient.FOLATE_DFE, folate(1000, 1701));
        assertThat(more.standing()).isEqualTo(Standing.ABOVE);
        assertThat(more.counted().orElseThrow()).isBetween(new BigDecimal("1001.4"), new BigDecimal("1001.5"));
    }

    @Test
    void without_total_folate_there_is_no_telling_folic_acid() {
        assertThat(intake(Nutrient.FOLATE_DFE, day("FOLDFE", 9000)).counted()).isEmpty();
    }

    /** SR28 rounds both figures: milk chocolate has 12 ug of folate and 11 ug DFE. */
    @Test
    void rounding_makes_no_folic_acid_below_nothing() {
        assertThat(Counts.FOLIC_ACID.of(folate(12, 11), Nutrient.FOLATE_DFE))
                .hasValueSatisfying(added -> assertThat(added).isZero());
    }

    @Test
    void each_nutrient_once_in_the_order_of_the_catalogue() {
        assertThat(REFERENCES)
                .extracting(Reference::nutrient)
                .hasSize(18)
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(
            value = Nutrient.class,
            names = {"ENERGY", "PROTEIN", "FAT", "FIBRE"})
    void what_is_a_rule_is_compared_with_the_target(Nutrient nutrient) {
        assertThat(reference(nutrient).recommended().orElseThrow().kind()).isEqualTo(Kind.TARGET);
    }

    @Test
    void nothing_is_compared_when_a_caution_stops_planning() {
        var pregnant = TestEater.of(TestEater.body(Sex.FEMALE, 70, 170, 30))
                .health("pregnant_or_breastfeeding", Answer.YES)
                .needs();

        assertThat(pregnant.references()).isEmpty();
        assertThat(pregnant.guides()).isEmpty();
    }

    private static Reference reference(Nutrient nutrient) {
        return REFERENCES.stream()
                .filter(r -> r.nutrient() == nutrient)
                .findFirst()
                .orElseThrow();
    }

    private static Intake intake(Nutrient nutrient, Nutrients day) {
        return Intake.of(List.of(reference(nutrient)), day).get(0);
    }

    private static Nutrients day(String tagname, int amount) {
        var values = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.values()) {
            if (nutrient.tagname().equals(tagname)) {
                values.put(nutrient, BigDecimal.valueOf(amount));
            }
        }
        return Nutrients.of(values);
    }

    private static Nutrients folate(int folate, int dfe) {
        return Nutrients.of(
                Map.of(Nutrient.FOLATE, BigDecimal.valueOf(folate), Nutrient.FOLATE_DFE, BigDecimal.valueOf(dfe)));
    }
}
