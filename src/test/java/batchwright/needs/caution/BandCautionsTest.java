package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.find;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Experience;
import batchwright.person.Sex;
import batchwright.person.Training;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Man, 80 kg, 180 cm, 30 years, PAL 2.0: total 3560 kcal by Mifflin, so that no limit of energy is near. */
class BandCautionsTest {
    private static final Body MAN = TestEater.body(Sex.MALE, 80, 180, 30);

    private static Eater eater(Body body, double percent) {
        return TestEater.of(body).pal(2.0).percentAWeek(percent).eater();
    }

    private static Eater training(Eater e, Experience experience) {
        var training = new Training(e.training().timesAWeek(), Optional.of(experience));
        return new Eater(
                e.id(), e.name(), e.body(), e.activity(), e.goal(), e.health(), e.adjustments(), e.wishes(), training);
    }

    @ParameterizedTest
    @CsvSource({
        "NOVICE, 0.5, false",
        "NOVICE, 0.51, true",
        "INTERMEDIATE, 0.5, false",
        "INTERMEDIATE, 0.51, true",
        "ADVANCED, 0.25, false",
        "ADVANCED, 0.26, true"
    })
    void warns_of_a_gain_above_the_band(Experience experience, double percent, boolean warns) {
        Needs needs = NeedsCalculator.needsOf(training(eater(MAN, percent), experience));
        assertThat(find(needs, "gain_fast").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /** Lean, 13.5 % body fat: FFM 69.2 kg, Cunningham 1865, total 3730, a quarter of it 932. */
    @ParameterizedTest
    @CsvSource({"13.5, -0.7, false", "13.5, -0.71, true", "20, -0.71, false", "20, -0.99, false"})
    void warns_the_lean_of_a_loss_above_theirs(double fat, double percent, boolean warns) {
        Needs needs = NeedsCalculator.needsOf(eater(TestEater.body(Sex.MALE, 80, 180, 30, fat), percent));
        assertThat(find(needs, "loss_fast").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0.24, true", "0.25, false", "-0.49, true", "-0.5, false"})
    void tells_those_who_train_that_a_goal_is_slow(double percent, boolean tells) {
        Needs said = NeedsCalculator.needsOf(training(eater(MAN, percent), Experience.NOVICE));
        Needs notSaid = NeedsCalculator.needsOf(eater(MAN, percent));
        assertThat(find(said, "slower_than_advised").isPresent()).isEqualTo(tells);
        assertThat(find(notSaid, "slower_than_advised")).isEmpty();
    }

    /** A printed 0.50 % is not called less than 0.5 %: 0.4969 % rounds to it. */
    @Test
    void counts_what_is_printed() {
        Needs needs = NeedsCalculator.needsOf(training(eater(MAN, -0.4969), Experience.NOVICE));
        assertThat(find(needs, "slower_than_advised")).isEmpty();
        assertThat(needs.goalSays()).contains("(0.50 %)");
    }

    @Test
    void says_nothing_of_advice_where_planning_stops() {
        Needs needs = NeedsCalculator.needsOf(training(eater(MAN, -1.5), Experience.NOVICE));
        assertThat(needs.stopsPlanning()).isTrue();
        assertThat(find(needs, "loss_fast")).isEmpty();
    }
}
