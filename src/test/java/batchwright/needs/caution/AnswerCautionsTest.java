package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.assertStop;
import static batchwright.needs.caution.HealthCautionsTest.find;
import static batchwright.person.Health.Answer.AGREED;
import static batchwright.person.Health.Answer.NO;
import static batchwright.person.Health.Answer.NOT_SAID;
import static batchwright.person.Health.Answer.YES;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Health;
import batchwright.person.HealthGroup;
import batchwright.person.HealthQuestion;
import batchwright.person.Sex;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What answers come to besides their own row, which {@code HealthQuestionsPublishedTest} looks at. */
class AnswerCautionsTest {
    private static final TestEater WOMAN =
            TestEater.of(TestEater.body(Sex.FEMALE, 75, 170, 40)).pal(1.7);
    private static final TestEater LOSING = WOMAN.percentAWeek(-0.3);

    static Stream<HealthQuestion> questions() {
        return HealthQuestion.all().stream();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void a_no_says_nothing_and_no_answer_is_named(HealthQuestion question) {
        assertThat(find(LOSING.health(question, NO).needs(), question.key())).isEmpty();
        assertThat(find(LOSING.needs(), "health_not_said")).isEmpty();
        assertThat(find(LOSING.health(question, NOT_SAID).needs(), "health_not_said")
                        .orElseThrow()
                        .text())
                .contains("apply: " + question.words() + ".");
    }

    /** Pregnancy and eating disorders: not answered is not no. */
    @ParameterizedTest
    @CsvSource({"pregnant_or_breastfeeding, FEMALE", "eating_disorder, FEMALE", "eating_disorder, MALE"})
    void a_loss_waits_for_an_answer(String question, Sex sex) {
        TestEater eater =
                TestEater.of(TestEater.body(sex, 75, 170, 40)).pal(1.7).health(question, NOT_SAID);

        assertStop(eater.percentAWeek(-0.3).needs(), "loss_waits_for_answer", true);
        assertStop(eater.needs(), "loss_waits_for_answer", false);
        assertStop(eater.percentAWeek(0.2).needs(), "loss_waits_for_answer", false);
        assertStop(eater.health(question, NO).percentAWeek(-0.3).needs(), "loss_waits_for_answer", false);
    }

    @Test
    void men_are_not_asked_about_pregnancy() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30))
                .percentAWeek(-0.3)
                .health("pregnant_or_breastfeeding", NOT_SAID)
                .health("missed_periods", NOT_SAID)
                .needs();
        assertThat(find(needs, "health_not_said")).isEmpty();
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /** Silence about a whole group is named by the group. */
    @Test
    void a_silent_group_is_named_once() {
        Needs needs = WOMAN.health(Health.NOT_SAID).needs();
        assertThat(find(needs, "health_not_said").orElseThrow().text())
                .contains("apply: pregnancy and periods, eating, weight lost,");
    }

    /** SCOFF counts two of five as positive (BMJ 1999;319:1467, from memory). */
    @ParameterizedTest
    @CsvSource({
        "made_self_sick, lost_control_of_eating",
        "lost_6_kg_in_3_months, feels_fat_when_thin",
        "food_rules_the_day, made_self_sick"
    })
    void two_signs_of_an_eating_disorder_hide_all_figures(String one, String other) {
        for (double percent : new double[] {-0.3, 0, 0.2}) {
            TestEater eater = WOMAN.percentAWeek(percent).health(one, YES);
            assertThat(eater.needs().hidesFigures()).isFalse();
            assertThat(eater.needs().stopsPlanning())
                    .as("one sign asks before a loss")
                    .isEqualTo(percent < 0);
            Needs needs = eater.health(other, YES).needs();
            assertThat(needs.hidesFigures()).isTrue();
            assertStop(needs, "eating_signs", true);
            assertThat(find(needs, one)).isEmpty();
        }
    }

    /** NICE CG32: two of a BMI under 18.5, more than 10 % lost, and medicine or alcohol. BMI 18.5 at 170 cm is 53.5 kg. */
    @ParameterizedTest
    @CsvSource({
        "75, diuretic, heavy_alcohol, false",
        "75, lost_over_10_percent, daily_acid_blocker, true",
        "75, lost_over_10_percent, heavy_alcohol, true",
        "53, diuretic, daily_acid_blocker, true",
        "53, lost_over_10_percent, gout, true",
        "53, warfarin, gout, false"
    })
    void two_small_signs_of_risk_at_refeeding_hide_all_figures(double kg, String one, String other, boolean hides) {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, kg, 170, 40))
                .health(one, YES)
                .health(other, YES)
                .needs();
        assertThat(find(needs, "refeeding_signs").isPresent()).isEqualTo(hides);
        assertThat(needs.hidesFigures()).isEqualTo(hides);
    }

    /** 0.5 % a week is our choice. */
    @ParameterizedTest
    @CsvSource({"gout", "gallstones", "osteoporosis"})
    void a_loss_is_slow(String question) {
        TestEater eater = WOMAN.health(question, AGREED);
        assertStop(eater.percentAWeek(-0.5).needs(), question, false);
        assertStop(eater.percentAWeek(-0.51).needs(), question, true);
        assertThat(find(eater.percentAWeek(-0.51).needs(), question)
                        .orElseThrow()
                        .text())
                .contains("0.51 % of weight");
        assertStop(WOMAN.percentAWeek(-0.51).needs(), question, false);
    }

    /**
     * By hand: Mifflin-St Jeor 956.5 kcal x PAL 1.4 = 1339; less 20 % of fat are 1071 kcal, 267.8 g of protein and carbohydrate together. 3 g per kg
     * of protein are 144 g and leave 123.8 g; 1.2 g per kg leave more than 130 g, the RDA of IOM 2005.
     */
    @ParameterizedTest
    @CsvSource({"3.0, true", "1.2, false"})
    void a_medicine_ending_in_gliflozin_keeps_130_g_of_carbohydrate(double proteinGPerKg, boolean stops) {
        TestEater small =
                TestEater.of(TestEater.body(Sex.FEMALE, 48, 150, 60)).pal(1.4).protein(proteinGPerKg);
        assertStop(small.health("sglt2_inhibitor", YES).needs(), "sglt2_inhibitor", stops);
        assertThat(find(small.needs(), "sglt2_inhibitor")).isEmpty();
    }

    /** 1.2 g per kg: 70 kg are 84 g; 60 g a day: ASMBS. A profile that asks for less gets the floor all the same. */
    @ParameterizedTest
    @CsvSource({"glp1_medicine, 84", "liver_disease, 84", "weight_loss_surgery_earlier, 60", "gout, 49"})
    void some_answers_raise_the_protein_floor(String question, int grams) {
        TestEater slim = TestEater.of(TestEater.body(Sex.FEMALE, 70, 170, 40)).health(question, AGREED);
        assertThat(protein(slim.protein(0.7))).isEqualTo(grams);
        assertThat(protein(slim.protein(2.0))).isEqualTo(140);
    }

    private static int protein(TestEater eater) {
        return eater.needs().target().orElseThrow().day(Nutrient.PROTEIN).least();
    }

    @ParameterizedTest
    @CsvSource({"bowel_disease, false", "gout, true"})
    void a_bowel_that_is_ill_has_no_fibre_floor(String question, boolean floor) {
        Needs needs = WOMAN.health(question, YES).needs();
        assertThat(needs.target().orElseThrow().day(Nutrient.FIBRE).least() > 0).isEqualTo(floor);
        Needs asked = WOMAN.adjusted(3, 1.4, 20, 400).health(question, YES).needs();
        assertThat(asked.target().orElseThrow().day(Nutrient.FIBRE).least())
                .as("as the profile asks")
                .isEqualTo(20);
    }

    /** The test eater avoids nothing; HealthQuestionsPublishedTest has one who avoids it. */
    @Test
    void coeliac_disease_needs_gluten_to_be_avoided() {
        assertStop(WOMAN.health("coeliac_disease", YES).needs(), "coeliac_disease", true);
    }

    /** No figure for protein is left, whatever the profile asks for. */
    @Test
    void no_protein_is_named_with_kidney_disease() {
        Needs needs = WOMAN.protein(3.0).health("kidney_disease", YES).needs();
        assertThat(needs.guides()).isEmpty();
        assertThat(needs.references()).isEmpty();
        assertThat(needs.cautions())
                .allSatisfy(caution ->
                        assertThat(caution.text()).doesNotContainPattern("\\d.{0,20} protein|protein .{0,20}\\d"));
    }

    @ParameterizedTest
    @CsvSource({
        "eating, true",
        "weight_lost, true",
        "pregnancy_and_periods, false",
        "sugar_or_weight_medicine, false",
        "alcohol, false"
    })
    void something_of_a_group_stops_until_it_is_said_what(String key, boolean hides) {
        HealthGroup group = HealthGroup.of(key);
        Health some = new Health(noBut(group)).withSome(group);
        Needs needs = WOMAN.health(some).needs();
        assertStop(needs, key, true);
        assertThat(needs.hidesFigures()).isEqualTo(hides);

        Health said = new Health(noBut(group))
                .with(group.questions().get(0), NO)
                .withNone(group)
                .withSome(group);
        assertThat(WOMAN.health(said).needs().stopsPlanning())
                .as("all answered with no")
                .isFalse();
    }

    private static Map<HealthQuestion, Health.Answer> noBut(HealthGroup group) {
        List<HealthQuestion> others = HealthQuestion.all().stream()
                .filter(question -> !question.group().equals(group))
                .toList();
        return others.stream().collect(Collectors.toMap(question -> question, question -> NO));
    }

    /** A text that stops names somebody to ask. */
    @ParameterizedTest
    @MethodSource("questions")
    void whoever_is_stopped_is_sent_to_somebody(HealthQuestion question) {
        for (double percent : new double[] {-0.3, 0, 0.2}) {
            Needs needs = WOMAN.percentAWeek(percent).health(question, YES).needs();
            assertThat(needs.cautions())
                    .filteredOn(Caution::stopsPlanning)
                    .allSatisfy(
                            caution -> assertThat(caution.text()).containsPattern("doctor|midwife|clinic|prescribes"));
        }
    }

    /** "No" is an answer, also where no table asks for it. */
    @ParameterizedTest
    @CsvSource({"-0.3, true", "0.2, true", "0, false"})
    void a_doctor_who_does_not_agree_stops_a_change_of_weight(double percent, boolean stops) {
        TestEater eater = WOMAN.percentAWeek(percent);
        assertThat(eater.needs().stopsPlanning()).isFalse();
        Needs needs = eater.health(TestEater.HEALTHY.withDoctorAgrees(NO)).needs();
        assertStop(needs, "doctor_disagrees", stops);
        assertThat(find(needs, "doctor_disagrees")).isPresent();
    }

    /** One of five, where two hide all figures: first a doctor agrees. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "made_self_sick",
                "lost_control_of_eating",
                "lost_6_kg_in_3_months",
                "feels_fat_when_thin",
                "food_rules_the_day"
            })
    void one_sign_of_an_eating_disorder_asks_before_a_loss(String sign) {
        TestEater eater = WOMAN.percentAWeek(-0.3);
        assertStop(eater.health(sign, YES).needs(), sign, true);
        assertStop(eater.health(sign, AGREED).needs(), sign, false);
    }

    /** More than 10 % in 3 to 6 months is more than 5 % in 6 to 12: never milder. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.3, 0, 0.2})
    void much_weight_lost_without_trying_is_judged_as_less_of_it_is(double percent) {
        for (String question : new String[] {"lost_over_10_percent", "lost_weight_without_trying"}) {
            TestEater eater = WOMAN.percentAWeek(percent);
            assertStop(eater.health(question, YES).needs(), question, true);
            assertStop(eater.health(question, AGREED).needs(), question, percent < 0);
        }
    }
}
