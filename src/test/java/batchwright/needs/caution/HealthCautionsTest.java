package batchwright.needs.caution;

import static batchwright.person.Health.Answer.YES;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Sex;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each caution on both sides of its edge. */
class HealthCautionsTest {
    private static final TestEater WOMAN = TestEater.of(TestEater.body(Sex.FEMALE, 65, 170, 30));

    @ParameterizedTest
    @CsvSource({"17.9, true", "18, false"})
    void stops_under_18(double years, boolean stops) {
        assertStop(TestEater.of(TestEater.body(Sex.MALE, 70, 180, years)).needs(), "under_18", stops);
    }

    /** BMI 16 at 200 cm is 64 kg. NICE CG32 counts a BMI below 16 as a high risk of refeeding problems. */
    @ParameterizedTest
    @CsvSource({"63.9, true", "64, false"})
    void stops_below_bmi_16(double kg, boolean stops) {
        assertStop(
                TestEater.of(TestEater.body(Sex.MALE, kg, 200, 30))
                        .percentAWeek(0.25)
                        .needs(),
                "refeeding_risk",
                stops);
    }

    /** 65 is a choice: PROT-AGE 2013 speaks of adults from 65 years on (from memory). */
    @ParameterizedTest
    @CsvSource({"64.9, false", "65, true"})
    void asks_older_people_for_care_without_stopping(double years, boolean warns) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 70, 180, years)).needs();
        assertThat(find(needs, "age_65_or_more").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /** WHO classes II and III begin at 35 and 40 (from memory); at 200 cm these are 140 and 160 kg. */
    @ParameterizedTest
    @CsvSource({"139.9, false, false", "140, true, false", "159.9, true, false", "160, false, true"})
    void refers_from_bmi_35_and_40_without_stopping(double kg, boolean from35, boolean from40) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, kg, 200, 30)).needs();
        assertThat(find(needs, "bmi_35_or_more").isPresent()).isEqualTo(from35);
        assertThat(find(needs, "bmi_40_or_more").isPresent()).isEqualTo(from40);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "eating_disorder, 30, 65",
        "hardly_ate, 30, 65",
        "cancer, 17, 65",
        "cancer, 30, 46",
        "eating_disorder, 30, 46"
    })
    void a_caution_that_hides_figures_stands_without_any(String yes, double years, double kg) {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, kg, 170, years))
                .percentAWeek(-0.5)
                .health(yes, YES)
                .needs();
        assertThat(needs.hidesFigures()).isTrue();
        assertThat(needs.goalKcal()).isZero();
        assertThat(needs.goalSays()).doesNotContainPattern("\\d");
        assertThat(needs.lines()).isEmpty();
        assertThat(needs.cautions())
                .allMatch(Caution::stopsPlanning)
                .allSatisfy(caution ->
                        assertThat(caution.text().replace("under 18 years", "")).doesNotContainPattern("\\d"));
    }

    @Test
    void always_says_that_it_is_an_estimate() {
        assertThat(find(WOMAN.needs(), "estimate_only")).isPresent();
    }

    static Optional<Caution> find(Needs needs, String code) {
        return needs.cautions().stream()
                .filter(caution -> caution.code().equals(code))
                .findFirst();
    }

    /** A stop leaves no target and no goal, only what holds the weight. */
    static void assertStop(Needs needs, String code, boolean stops) {
        assertThat(find(needs, code).map(Caution::stopsPlanning).orElse(false))
                .as(code)
                .isEqualTo(stops);
        assertThat(needs.stopsPlanning()).isEqualTo(stops);
        assertThat(needs.target().isEmpty()).isEqualTo(stops);
        assertThat(needs.lines().isEmpty()).isEqualTo(stops);
        assertThat(needs.total().kcal()).isPositive();
    }
}
