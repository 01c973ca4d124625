package batchwright.needs.caution;

import static batchwright.person.Health.Answer.NO;
import static batchwright.person.Health.Answer.NOT_SAID;
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

    @Test
    void stops_in_pregnancy() {
        assertStop(WOMAN.health(YES, NO, NO, NO).needs(), "pregnant_or_breastfeeding", true);
        assertStop(WOMAN.health(NO, NO, NO, NO).needs(), "pregnant_or_breastfeeding", false);
    }

    @Test
    void stops_with_an_eating_disorder() {
        assertStop(WOMAN.health(NO, YES, NO, NO).needs(), "eating_disorder", true);
        assertStop(WOMAN.health(NO, NO, NO, NO).needs(), "eating_disorder", false);
    }

    @Test
    void shows_no_deficit_with_an_eating_disorder() {
        Needs needs = WOMAN.percentAWeek(-0.5).health(NO, YES, NO, NO).needs();
        assertThat(needs.goalKcal()).isZero();
        assertThat(needs.goalSays()).doesNotContainPattern("\\d");
        assertThat(needs.lines()).isEmpty();
        assertThat(needs.cautions()).extracting(Caution::code).containsExactly("eating_disorder", "estimate_only");
    }

    @Test
    void stops_with_kidney_disease() {
        assertStop(WOMAN.health(NO, NO, YES, NO).needs(), "kidney_disease", true);
        assertStop(WOMAN.health(NO, NO, NO, NO).needs(), "kidney_disease", false);
    }

    /** BMI 40 at 200 cm is 160 kg. */
    @ParameterizedTest
    @CsvSource({"159.9, false", "160, true"})
    void refers_from_bmi_40_without_stopping(double kg, boolean warns) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, kg, 200, 30)).needs();
        assertThat(find(needs, "bmi_40_or_more").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    @Test
    void asks_for_what_was_not_said() {
        Needs needs = WOMAN.health(NOT_SAID, NOT_SAID, NO, NOT_SAID).needs();
        assertThat(find(needs, "health_not_said").orElseThrow().text())
                .contains("pregnancy or breastfeeding, an eating disorder, medicine for diabetes")
                .doesNotContain("kidney");
        assertThat(needs.stopsPlanning()).isFalse();
        assertThat(find(WOMAN.needs(), "health_not_said")).isEmpty();
    }

    @Test
    void does_not_ask_men_about_pregnancy() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 70, 180, 30))
                .health(NOT_SAID, NO, NO, NO)
                .needs();
        assertThat(find(needs, "health_not_said")).isEmpty();
    }

    @Test
    void always_says_that_it_is_an_estimate() {
        assertThat(find(WOMAN.needs(), "estimate_only")).isPresent();
        assertThat(find(WOMAN.health(YES, YES, YES, YES).needs(), "estimate_only"))
                .isPresent();
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
