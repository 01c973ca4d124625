package batchwright.needs.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.needs.total.NetExercise;
import batchwright.person.Compendium2011;
import batchwright.person.Diary;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** EA = (intake - net cost of training) / FFM: Loucks and Thuma 2003; Mountjoy et al. 2023 keep the formula. */
class EnergyAvailabilityTest {
    /** By hand: 1400 / 45 and 1300 / 45, on both sides of 30. */
    @ParameterizedTest
    @CsvSource({"1800, 400, 31.1", "1700, 400, 28.9"})
    void is_what_is_left_for_each_kg_of_fat_free_mass(double intake, double training, double kcalPerKg) {
        var net = new NetExercise(new Energy(0), new Energy(training), new Energy(training), true);
        var available = new EnergyAvailability(new Energy(intake), net, new Mass(45));
        assertThat(available.kcalPerKg()).isCloseTo(kcalPerKg, within(0.05));
    }

    /**
     * 22 h of sitting (1.3 METs), 1 h of walking (3.5), 1 h of running (9.8): mean 1.746, so PAL 1.75. Running takes
     * 8.8 x resting / 24 beyond rest; with a total of 1680 kcal resting is 960, 40 an hour: 352 kcal. FFM 60 x 0.75 = 45 kg.
     */
    @Test
    void takes_the_training_of_a_diary_off() {
        var day = new Diary(List.of(entry("sitting", 22), entry("walking", 1), entry("running_10_km_h", 1)));
        assertThat(day.pal()).isEqualTo(1.75);
        EnergyAvailability available = available(day);
        assertThat(available.exercise().likely().kcal()).isCloseTo(352, within(1e-6));
        assertThat(available.kcalPerKg()).isCloseTo((1600 - 352) / 45.0, within(1e-6));
    }

    /** By hand, resting 960: 0.9 x 0.35 x 960 = 302; at least 0.9 x 0.05 x 960 = 43, at most 0.65 x 960 = 624. */
    @Test
    void estimates_exercise_from_a_pal_with_its_range() {
        EnergyAvailability available = available(new PalNumber(1.75));
        assertThat(available.exercise().counted()).isFalse();
        assertThat(available.kcalPerKg()).isCloseTo((1600 - 302.4) / 45, within(1e-6));
        assertThat(available.leastKcalPerKg()).isCloseTo((1600 - 624) / 45.0, within(1e-6));
        assertThat(available.mostKcalPerKg()).isCloseTo((1600 - 43.2) / 45, within(1e-6));
    }

    /**
     * A woman who sits and trains three hours a day at MET 8: the diary says PAL 2.02. Before, the same number left 55 kcal "above balance" where
     * the diary left 31.
     */
    @Test
    void a_pal_of_2_02_and_the_diary_behind_it_agree_within_the_stated_range() {
        var day = new Diary(List.of(
                entry("sleeping", 8), entry("sitting", 12), entry("circuits_hard", 3), entry("office_work", 1)));
        assertThat(day.pal()).isEqualTo(2.03);
        var body = TestEater.body(Sex.FEMALE, 60, 165, 30, 25.0);
        EnergyAvailability byDiary = held(TestEater.of(body).activity(day));
        EnergyAvailability byNumber = held(TestEater.of(body).activity(new PalNumber(day.pal())));
        assertThat(byDiary.kcalPerKg()).isBetween(byNumber.leastKcalPerKg(), byNumber.kcalPerKg());
        assertThat(byNumber.kcalPerKg()).isLessThan(45);
        assertThat(byNumber.leastKcalPerKg()).isLessThan(byDiary.mostKcalPerKg());
    }

    /** The threshold was never shown in obesity. */
    @Test
    void is_left_out_from_a_bmi_of_30_on() {
        assertThat(TestEater.of(TestEater.body(Sex.FEMALE, 81.6, 165, 30, 40.0))
                        .needs()
                        .energyAvailability())
                .isPresent();
        assertThat(TestEater.of(TestEater.body(Sex.FEMALE, 81.7, 165, 30, 40.0))
                        .needs()
                        .energyAvailability())
                .isEmpty();
    }

    private static EnergyAvailability held(TestEater eater) {
        return eater.needs().energyAvailability().orElseThrow();
    }

    private static EnergyAvailability available(PhysicalActivity activity) {
        var eater = TestEater.of(TestEater.body(Sex.FEMALE, 60, 165, 30, 25.0))
                .activity(activity)
                .eater();
        return EnergyAvailability.of(eater, new Energy(1680), new Energy(1600)).orElseThrow();
    }

    private static Diary.Entry entry(String id, int hours) {
        return new Diary.Entry(
                Optional.ofNullable(Compendium2011.activities().get(id)).orElseThrow(), hours * 60);
    }
}
