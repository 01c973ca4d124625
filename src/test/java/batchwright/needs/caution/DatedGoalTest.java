package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.assertStop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.food.Nutrient;
import batchwright.needs.Needs;
import batchwright.needs.Outlook;
import batchwright.needs.TestEater;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Goal;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A weight by a date is judged by the first four weeks of its intake, as a rate is: they are faster than its average. */
class DatedGoalTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    /** BMI 28.3. */
    private static final TestEater WOMAN =
            TestEater.of(TestEater.body(Sex.FEMALE, 80, 168, 35)).pal(1.6);

    private static TestEater to60(LocalDate by) {
        return WOMAN.goal(new Goal.ReachWeight(new Mass(60), DAY, by));
    }

    /** The average is 0.32 % a week, the first four weeks are faster than 0.5 %. */
    @ParameterizedTest
    @CsvSource({"gallstones, AGREED", "gout, YES", "osteoporosis, AGREED"})
    void an_average_does_not_get_round_the_most_of_a_slow_loss(String question, Answer answer) {
        LocalDate by = LocalDate.of(2028, 6, 1);
        assertThat(to60(by).needs().stopsPlanning()).isFalse();
        assertStop(to60(by).health(question, answer).needs(), question, true);
    }

    @Test
    void its_rate_is_that_of_the_model_in_the_first_four_weeks() {
        Needs needs = to60(LocalDate.of(2028, 6, 1)).needs();
        WeeklyChange change = needs.goal().orElseThrow().change();
        double after =
                Outlook.projection(needs, 4).orElseThrow().last().likely().weightKg();
        assertThat(change.kgAWeek()).isCloseTo((after - 80) / 4, within(0.005));
        assertThat(needs.goalSays()).contains("a week in the next four weeks, 0.26 kg on average");
    }

    @ParameterizedTest
    @CsvSource({"2028-06-01", "2028-08-01", "2028-10-01"})
    void the_same_deficit_has_the_same_judgement_and_the_same_protein(LocalDate by) {
        Needs dated = to60(by).needs();
        Needs plain = WOMAN.kcalADay(dated.goalKcal()).needs();
        assertThat(dated.target().orElseThrow().energyAimKcal())
                .isEqualTo(plain.target().orElseThrow().energyAimKcal());
        assertThat(protein(dated)).isEqualTo(protein(plain));
        assertThat(dated.goal().orElseThrow().change().kgAWeek())
                .isCloseTo(plain.goal().orElseThrow().change().kgAWeek(), within(1e-6));
    }

    private static int protein(Needs needs) {
        return needs.target().orElseThrow().day(Nutrient.PROTEIN).least();
    }

    /** The day that is named is planned, the day before is not: man, BMI 17.5, 25 years, and others; gains and losses. */
    @ParameterizedTest
    @CsvSource({
        "MALE, 60, 185, 25, 68",
        "MALE, 80, 200, 30, 89",
        "FEMALE, 50, 168, 40, 58",
        "FEMALE, 80, 168, 35, 70",
        "MALE, 120, 185, 66, 112"
    })
    void a_named_day_is_planned_and_the_day_before_is_not(Sex sex, double kg, double cm, double years, double wanted) {
        TestEater eater = TestEater.of(TestEater.body(sex, kg, cm, years))
                .pal(1.7)
                .health(TestEater.HEALTHY.withDoctorAgrees(Answer.YES));
        LocalDate day = namedDay(by(eater, wanted, DAY.plusWeeks(3)));
        assertThat(by(eater, wanted, day).stopsPlanning()).isFalse();
        assertThat(by(eater, wanted, day.minusDays(1)).stopsPlanning()).isTrue();
    }

    @Test
    void where_no_day_is_planned_that_is_said() {
        TestEater thin = TestEater.of(TestEater.body(Sex.MALE, 60, 185, 25)).pal(1.7);
        assertThat(stops(by(thin, 75, DAY.plusWeeks(3)))).contains("No day until 2028-11-27", "is planned for 75 kg");
        TestEater man = TestEater.of(TestEater.body(Sex.MALE, 100, 180, 40)).pal(1.7);
        TestEater open = man.health(TestEater.HEALTHY.withDoctorAgrees(Answer.NO));
        assertThat(stops(by(open, 90, DAY.plusWeeks(3))))
                .contains("No day until")
                .doesNotContain("reached on");
    }

    /** 20 kg in a week: no intake that the model knows. No figure of the goal is shown that means nothing. */
    @Test
    void a_day_that_is_far_too_near_is_said_to_be_out_of_reach() {
        Needs needs = by(WOMAN, 60, DAY.plusWeeks(1));
        assertThat(stops(needs))
                .contains("60 kg cannot be reached by 2026-12-07: it would take less than a quarter of the total.")
                .contains("by eating an even")
                .doesNotContain("This goal eats");
    }

    /** A warning of a goal that is refused means nothing: it holds figures of what nobody is to eat. */
    @ParameterizedTest
    @CsvSource({"58", "62", "66"})
    void a_refused_goal_leaves_only_what_refuses_it(double wanted) {
        Needs needs = by(WOMAN, wanted, DAY.plusWeeks(8));
        assertThat(needs.cautions().stream().map(Caution::text).toList())
                .isNotEmpty()
                .noneMatch(text ->
                        text.contains("This comes to") || text.contains("The aim of") || text.contains("lowered"));
        assertThat(needs.cautions().stream()
                        .filter(caution -> !caution.stopsPlanning())
                        .map(Caution::code))
                .containsExactly("estimate_only");
    }

    private static Needs by(TestEater eater, double kg, LocalDate day) {
        return eater.goal(new Goal.ReachWeight(new Mass(kg), DAY, day)).needs();
    }

    private static String stops(Needs needs) {
        return needs.cautions().stream()
                .filter(Caution::stopsPlanning)
                .map(Caution::text)
                .collect(Collectors.joining(" "));
    }

    private static LocalDate namedDay(Needs needs) {
        Matcher day = Pattern.compile("reached on (\\d{4}-\\d{2}-\\d{2}) at the earliest")
                .matcher(stops(needs));
        assertThat(day.find()).as(stops(needs)).isTrue();
        return LocalDate.parse(day.group(1));
    }
}
