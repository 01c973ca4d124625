package batchwright.needs.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Activity;
import batchwright.person.Compendium2011;
import batchwright.person.Diary;
import batchwright.person.PalNumber;
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
        var available = new EnergyAvailability(new Energy(intake), Optional.of(new Energy(training)), new Mass(45));
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
        assertThat(available.training().orElseThrow().kcal()).isCloseTo(352, within(1e-6));
        assertThat(available.kcalPerKg()).isCloseTo((1600 - 352) / 45.0, within(1e-6));
    }

    @Test
    void knows_no_training_without_a_diary() {
        EnergyAvailability available = available(new PalNumber(1.75));
        assertThat(available.training()).isEmpty();
        assertThat(available.kcalPerKg()).isCloseTo(1600 / 45.0, within(1e-6));
    }

    private static EnergyAvailability available(Activity activity) {
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
