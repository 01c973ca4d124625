package batchwright.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.person.Body;
import batchwright.person.CommonMultiplier;
import batchwright.person.Diaries;
import batchwright.person.FaoLevel;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import batchwright.person.Sex;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A PAL holds all of the day, training too: nothing comes on top of it. */
class ActivityInTotalTest {
    /** Rests on 1780 kcal by Mifflin-St Jeor. */
    private static final Body MAN = TestEater.body(Sex.MALE, 80, 180, 30);

    static Stream<PhysicalActivity> activities() {
        return Stream.of(
                FaoLevel.VIGOROUS,
                CommonMultiplier.LIGHT,
                new PalNumber(1.65),
                Diaries.of("sleeping 8, desk_work 8, running_10_km_h 1, sitting 7"));
    }

    @ParameterizedTest
    @MethodSource("activities")
    void total_is_resting_energy_times_pal_and_no_more(PhysicalActivity activity) {
        Needs needs = TestEater.of(MAN).activity(activity).needs();
        assertThat(needs.total().kcal()).isCloseTo(1780 * activity.pal(), within(1e-9));
    }

    /** (8 x 0.95 + 8 x 1.3 + 9.8 + 7 x 1.3) / 24 = 36.9 / 24 = 1.5375. */
    @Test
    void a_diary_is_its_mean_met() {
        assertThat(Diaries.of("sleeping 8, desk_work 8, running_10_km_h 1, sitting 7")
                        .pal())
                .isEqualTo(1.54);
    }

    /**
     * An hour of running (9.8) in the place of an hour of sitting (1.3) costs 8.5 METs above it, 8.5 / 24 = 0.354 of resting energy
     * and not 9.8 / 24 = 0.408 on top; a PAL is rounded to 0.01.
     */
    @Test
    void an_hour_of_running_costs_what_it_adds_to_the_hour_it_takes() {
        double seated = total("sleeping 8, desk_work 8, sitting 8");
        double run = total("sleeping 8, desk_work 8, running_10_km_h 1, sitting 7");
        assertThat((run - seated) / 1780).isCloseTo(8.5 / 24, within(0.0101)).isLessThan(9.8 / 24 - 0.01);
    }

    /** At 1 kcal per kg and hour the same METs give a heavy man more than by his own resting energy, a light one about the same. */
    @Test
    void mets_by_weight_alone_are_more_for_the_heavy() {
        for (double kg : new double[] {100, 120, 140}) {
            double restingByMet = kg * 24;
            Needs needs = TestEater.of(TestEater.body(Sex.MALE, kg, 175, 40)).needs();
            assertThat(restingByMet / needs.restingInUse().perDay().kcal()).isGreaterThan(1.25);
        }
    }

    private static double total(String diary) {
        return TestEater.of(MAN).activity(Diaries.of(diary)).needs().total().kcal();
    }
}
