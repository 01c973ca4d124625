package batchwright.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The formula is ours; what it comes to is held against what others measured or published. */
class ActivityFactsPublishedTest {
    private static final double ADULT = 30;

    /** BMC Res Notes 2011;4:512: a day in a calorimeter, light acts besides, 8973 steps 1.42 (SD 0.10), 29 588 brisk steps 1.82. */
    @ParameterizedTest
    @CsvSource({"8973, 1.42", "29588, 1.82"})
    void comes_within_a_standard_deviation_of_days_in_a_calorimeter(int steps, double pal) {
        assertThat(pal(UsualDay.SITTING, steps)).isCloseTo(pal, within(0.10));
    }

    /** IOM 2005, from memory: miles beyond daily living at 70 kg for PAL 1.5, 1.75 and 2.2; 2100 steps a mile, over 4000 of a usual day. */
    @ParameterizedTest
    @CsvSource({"2.2, 1.5", "7.3, 1.75", "16.7, 2.2"})
    void comes_within_a_tenth_of_the_miles_of_iom(double miles, double pal) {
        assertThat(pal(UsualDay.SITTING, (int) (4000 + 2100 * miles))).isCloseTo(pal, within(0.10));
    }

    /** UK COMA 1991, from memory: men with sitting, moderate and heavy work and inactive leisure 1.4, 1.6, 1.7; within 0.2. */
    @ParameterizedTest
    @CsvSource({"SITTING, 1.4", "STANDING, 1.6", "CARRYING, 1.6", "HEAVY, 1.7"})
    void comes_near_the_jobs_of_coma(UsualDay day, double pal) {
        assertThat(pal(day, ActivityFacts.USUAL_STEPS)).isCloseTo(pal, within(0.2));
    }

    /** By hand: 5 h a week at MET 5 is 0.714 h x 4 / 24 / 0.9 = 0.132. */
    @Test
    void five_hours_of_lifting_add_0_13() {
        assertThat(facts(UsualDay.SITTING, 4000, ADULT, entry("squats", 300)).pal())
                .isEqualTo(1.53);
    }

    /** 100 steps a minute, at 0.02 for 1000, is what walking at MET 3.5 comes to: 1/60 h x 2.5 / 24 / 0.9 = 0.00193 a minute, not 0.0020. */
    @Test
    void a_walk_by_steps_is_a_walk_by_mets() {
        double bySteps = pal(UsualDay.SITTING, 4000 + 60 * ActivityFacts.STEPS_A_MINUTE) - 1.40;
        assertThat(bySteps).isCloseTo(60 * 2.5 / 60 / 24 / 0.9, within(0.01));
    }

    /** Westerterp 2013: 1.1-1.2 to 2.0-2.5 is sustained, and it falls with age. */
    @ParameterizedTest
    @CsvSource({"30, 2.40", "60, 2.40", "65, 2.20", "70, 2.00", "90, 2.00"})
    void is_held_at_what_people_live_at(double years, double pal) {
        ActivityFacts heavy = facts(UsualDay.HEAVY, 20000, years, entry("running_10_km_h", 900));
        assertThat(heavy.pal()).isEqualTo(pal);
        assertThat(heavy.unheldPal()).isGreaterThan(2.4);
        assertThat(facts(UsualDay.CHAIR_BOUND, 0, years).pal()).isEqualTo(1.2);
    }

    private static double pal(UsualDay day, int steps) {
        return facts(day, steps, ADULT).pal();
    }

    private static ActivityFacts facts(UsualDay day, int steps, double years, Diary.Entry... training) {
        return new ActivityFacts(day, steps, List.of(training), years);
    }

    private static Diary.Entry entry(String id, int minutes) {
        return new Diary.Entry(
                Optional.ofNullable(Compendium2011.activities().get(id)).orElseThrow(), minutes);
    }
}
