package batchwright.needs.caution;

import static batchwright.person.Health.Answer.NO;
import static batchwright.person.Health.Answer.NOT_SAID;
import static batchwright.person.Health.Answer.YES;
import static batchwright.person.HealthQuestion.HARDLY_ATE;
import static batchwright.person.HealthQuestion.KIDNEY_DISEASE;
import static batchwright.person.HealthQuestion.PREGNANT_OR_BREASTFEEDING;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.HealthQuestion;
import batchwright.person.Sex;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

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

    /** Days with hardly any food are a criterion of NICE CG32 at any weight (more than 10), and with a BMI under 18.5 (more than 5). */
    @Test
    void stops_after_days_with_hardly_any_food() {
        assertStop(WOMAN.health(HARDLY_ATE, YES).needs(), "refeeding_risk", true);
        assertStop(WOMAN.needs(), "refeeding_risk", false);
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

    /** Every yes but that to medicine for diabetes (which depends on the goal) stops planning, under its own code. */
    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"DIABETES_MEDICINE", "HARDLY_ATE"})
    void stops_at_a_yes_and_at_nothing_else(HealthQuestion question) {
        assertStop(WOMAN.health(question, YES).needs(), question.key(), true);
        assertStop(WOMAN.health(question, NO).needs(), question.key(), false);
        assertStop(WOMAN.health(question, NOT_SAID).needs(), question.key(), false);
        assertThat(find(WOMAN.health(question, YES).needs(), question.key())
                        .orElseThrow()
                        .text())
                .containsPattern("doctor|midwife");
    }

    @ParameterizedTest
    @EnumSource
    void asks_for_what_was_not_said(HealthQuestion question) {
        Needs needs = WOMAN.health(question, NOT_SAID).needs();
        assertThat(find(needs, "health_not_said").orElseThrow().text()).contains("apply: " + question.words() + ".");
        assertThat(needs.stopsPlanning()).isFalse();
        assertThat(find(WOMAN.needs(), "health_not_said")).isEmpty();
    }

    @Test
    void does_not_ask_men_about_pregnancy() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 70, 180, 30))
                .health(PREGNANT_OR_BREASTFEEDING, NOT_SAID)
                .needs();
        assertThat(find(needs, "health_not_said")).isEmpty();
    }

    /** A yes to kidney disease leaves no figure for protein, whatever the profile asks for. */
    @Test
    void names_no_protein_with_kidney_disease() {
        Needs needs = WOMAN.protein(3.0).health(KIDNEY_DISEASE, YES).needs();
        assertThat(needs.guides()).isEmpty();
        assertThat(needs.references()).isEmpty();
        assertThat(needs.cautions())
                .allSatisfy(caution ->
                        assertThat(caution.text()).doesNotContainPattern("\\d.{0,20} protein|protein .{0,20}\\d"));
    }

    @ParameterizedTest
    @CsvSource({
        "EATING_DISORDER, 30, 65",
        "HARDLY_ATE, 30, 65",
        "CANCER, 17, 65",
        "CANCER, 30, 46",
        "EATING_DISORDER, 30, 46"
    })
    void a_caution_that_hides_figures_stands_without_any(HealthQuestion yes, double years, double kg) {
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

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"EATING_DISORDER", "HARDLY_ATE"})
    void other_answers_hide_no_figures(HealthQuestion question) {
        Needs needs = WOMAN.health(question, YES).needs();
        assertThat(needs.hidesFigures()).isFalse();
        assertThat(find(needs, "estimate_only")).isPresent();
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
