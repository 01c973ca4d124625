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
        double after = Outlook.projection(needs, 4).orElseThrow().last().likely().weightKg();
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
}
