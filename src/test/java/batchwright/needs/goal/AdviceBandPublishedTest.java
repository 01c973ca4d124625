package batchwright.needs.goal;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Experience;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import batchwright.quantity.Share;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The bands are those of the papers, as read in their abstracts: Iraki J et al. Sports 2019;7:154 (gain 0.25-0.5 % a week, surplus
 * about 10-20 %, for novice to intermediate; both less for advanced); Slater GJ et al. Front Nutr 2019;6:131 (about 1500-2000 kJ a
 * day); Helms ER et al. J Int Soc Sports Nutr 2014;11:20 (lose 0.5-1.0 % a week, slower when leaner).
 */
class AdviceBandPublishedTest {
    private static final Body OF_80_KG = TestEater.body(Sex.MALE, 80, 180, 30);
    private static final Energy TOTAL = new Energy(2500);

    private static WeeklyChange change(double percent) {
        return WeeklyChange.byRule(new Goal.PercentAWeek(percent), OF_80_KG);
    }

    private static AdviceBand band(double percent, Body body, Optional<Experience> experience) {
        return AdviceBand.of(change(percent), body, experience).orElseThrow();
    }

    /** 1500 and 2000 kJ / 4.184 are 358.5 and 478.0 kcal; 10-20 % of 2500 kcal are 250-500; 0.25-0.5 % of 80 kg are 0.2-0.4 kg. */
    @ParameterizedTest
    @EnumSource(names = {"NOVICE", "INTERMEDIATE"})
    void gain_of_novice_to_intermediate_lifters(Experience experience) {
        assertThat(band(0.3, OF_80_KG, Optional.of(experience)).says(OF_80_KG, TOTAL))
                .isEqualTo(
                        "for novice and intermediate lifters: 0.25-0.5 % of weight a week, 0.20-0.40 kg, and a surplus of"
                                + " 10-20 % of the total, 250-500 kcal a day; a careful start is 359-478 kcal (Slater et al., Front Nutr"
                                + " 2019;6:131)");
    }

    @Test
    void gain_of_advanced_lifters_is_less_of_both() {
        AdviceBand usual = band(0.3, OF_80_KG, Optional.empty());
        AdviceBand advanced = band(0.3, OF_80_KG, Optional.of(Experience.ADVANCED));
        assertThat(advanced.mostPercent()).isLessThan(usual.mostPercent());
        assertThat(advanced.mostOfTotal()).isLessThan(usual.mostOfTotal());
    }

    @Test
    void loss_is_slower_when_leaner() {
        AdviceBand usual = band(-0.6, TestEater.body(Sex.MALE, 80, 180, 30, 15.0), Optional.empty());
        AdviceBand lean = band(-0.6, TestEater.body(Sex.MALE, 80, 180, 30, 14.9), Optional.empty());
        assertThat(usual.says(OF_80_KG, TOTAL))
                .isEqualTo("for people who train: 0.5-1 % of weight a week, 0.40-0.80 kg");
        assertThat(lean.mostPercent()).isEqualTo(0.7); // Garthe et al. 2011, the slower group
    }

    /** Body fat from BMI takes a muscular body for a fat one and a slight one for lean: it does not say who is lean. */
    @Test
    void who_is_lean_is_not_told_from_bmi() {
        Share fat = Share.ofPercent(10);
        Body byBmi = OF_80_KG.withFat(new BodyFat.Estimated(fat, "BMI", 4.1, false));
        Body byTape = OF_80_KG.withFat(new BodyFat.Estimated(fat, "tape", 3.5, true));
        assertThat(band(-0.6, byBmi, Optional.empty()).mostPercent()).isEqualTo(1.0);
        assertThat(band(-0.6, byTape, Optional.empty()).mostPercent()).isEqualTo(0.7);
    }

    /** 20 % of 2000 kcal are 400 kcal, which 0.46 % a week of 80 kg is above: 0.46 x 0.8 x 1100 = 404.8. */
    @ParameterizedTest
    @CsvSource({
        "0.24, 2500, true, false",
        "0.25, 2500, false, false",
        "0.5, 2500, false, false",
        "0.501, 2500, false, true",
        "0.45, 2000, false, false",
        "0.46, 2000, false, true"
    })
    void both_ends_belong_to_the_band(double percent, double total, boolean slower, boolean faster) {
        AdviceBand band = band(percent, OF_80_KG, Optional.empty());
        assertThat(band.isNotReachedBy(change(percent))).isEqualTo(slower);
        assertThat(band.isExceededBy(change(percent), new Energy(total))).isEqualTo(faster);
    }

    @Test
    void who_holds_the_weight_needs_no_band() {
        assertThat(AdviceBand.of(change(0), OF_80_KG, Optional.of(Experience.NOVICE)))
                .isEmpty();
    }
}
