package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.assertStop;
import static batchwright.needs.caution.HealthCautionsTest.find;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Sex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each caution on both sides of its edge. */
class IntakeCautionsTest {
    /** Woman, 50 kg, 155 cm, 50 years: Mifflin 1057.75, at PAL 1.4 1480.85. Losing 681 leaves 799.85 = 800, 682 leaves 799. */
    @ParameterizedTest
    @CsvSource({"-681, false", "-682, true"})
    void leaves_less_than_800_kcal_to_clinics(double kcal, boolean names) {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 50, 155, 50))
                .pal(1.4)
                .kcalADay(kcal)
                .needs();
        assertThat(find(needs, "very_low_energy").isPresent()).isEqualTo(names);
        assertThat(needs.stopsPlanning()).isTrue();
    }

    /**
     * NHLBI, practical guide: low-calorie diets of 1000-1200 kcal for most women and 1200-1600 for most men; 1500 for women is a
     * choice. Woman, 60 kg, 165 cm, 40 years: Mifflin 600 + 1031.25 - 200 - 161 = 1270.25, at PAL 1.4 1778.35; 278 leaves 1500.35.
     * Man, 60 kg, 165 cm, 60 years: Mifflin 1336.25, at PAL 1.4 1870.75; 270 leaves 1600.75 = 1601.
     */
    @ParameterizedTest
    @CsvSource({
        "FEMALE, 40, -277, false",
        "FEMALE, 40, -278, true",
        "MALE, 60, -270, false",
        "MALE, 60, -271, true",
        "MALE, 60, -371, true",
        "MALE, 60, -372, false"
    })
    void warns_of_little_energy_above_the_floor(Sex sex, int years, double kcal, boolean warns) {
        Needs needs = TestEater.of(TestEater.body(sex, 60, 165, years))
                .pal(1.4)
                .kcalADay(kcal)
                .needs();
        assertThat(find(needs, "low_energy").isPresent()).isEqualTo(warns);
    }

    /**
     * Common practice, not science. Woman, 54 kg, 155 cm, 58 years: Mifflin 540 + 968.75 - 290 - 161 = 1057.75; at PAL 1.4 1480.85. Losing
     * 281 kcal a day leaves 1199.85 = 1200; 282 leaves 1199. BMI 22.5.
     */
    @ParameterizedTest
    @CsvSource({"-281, false", "-282, true"})
    void stops_under_1200_kcal_for_women(double kcal, boolean stops) {
        TestEater woman = TestEater.of(TestEater.body(Sex.FEMALE, 54, 155, 58));
        assertStop(woman.pal(1.4).kcalADay(kcal).needs(), "intake_below_floor", stops);
    }

    /** Man, 60 kg, 165 cm, 60 years: Mifflin 600 + 1031.25 - 300 + 5 = 1336.25; at PAL 1.4 1870.75. 371 leaves 1499.75 = 1500. */
    @ParameterizedTest
    @CsvSource({"-371, false", "-372, true"})
    void stops_under_1500_kcal_for_men(double kcal, boolean stops) {
        TestEater man = TestEater.of(TestEater.body(Sex.MALE, 60, 165, 60));
        assertStop(man.pal(1.4).kcalADay(kcal).needs(), "intake_below_floor", stops);
    }

    /**
     * Man, 80 kg, 20 % fat: FFM 64 kg, Cunningham 1752.4, at PAL 1.4 2453.36. Losing 533 leaves 1920 = 30.0 kcal/kg, 534 leaves 1919.
     * At PAL 1.2 the total is 2102.88; losing 502 leaves 1601 = 25.02, 503 leaves 1600 = 25.0, 504 leaves 1599 = 24.98.
     */
    @ParameterizedTest
    @CsvSource({"1.4, -533, false, false", "1.4, -534, true, false", "1.2, -503, true, false", "1.2, -504, true, true"})
    void watches_the_energy_left_per_kg_of_fat_free_mass(double pal, double kcal, boolean warns, boolean stops) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30, 20.0))
                .pal(pal)
                .kcalADay(kcal)
                .needs();
        assertThat(find(needs, "low_energy_availability").isPresent()).isEqualTo(warns);
        assertStop(needs, "low_energy_availability", stops);
    }
}
