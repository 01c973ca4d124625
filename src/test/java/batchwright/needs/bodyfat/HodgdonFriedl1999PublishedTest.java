package batchwright.needs.bodyfat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.person.Tape;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HodgdonFriedl1999PublishedTest {
    private static Body inches(Sex sex, double height, double neck, double waist, double hips) {
        return body(
                sex, Length.ofInches(height), Length.ofInches(neck), Length.ofInches(waist), hips, Length.CM_PER_INCH);
    }

    private static Body centimetres(Sex sex, double height, double neck, double waist, double hips) {
        return body(sex, new Length(height), new Length(neck), new Length(waist), hips, 1);
    }

    private static Body body(Sex sex, Length height, Length neck, Length waist, double hips, double cmPerUnit) {
        var tape = new Tape(neck, waist, Optional.of(hips).filter(h -> h > 0).map(h -> new Length(h * cmPerUnit)));
        return new Body(sex, 30, new Mass(80), height, Optional.empty(), Optional.of(tape));
    }

    private static double percent(Body body) {
        return HodgdonFriedl1999.of(body).orElseThrow().fat().percent();
    }

    /** A worked example on a page about the formula of the US Department of Defense: abdomen 34, neck 15, height 70 in is 17.5 %. */
    @Test
    void matches_the_printed_example() {
        assertThat(percent(inches(Sex.MALE, 70, 15, 34, 0))).isCloseTo(17.5, within(0.05));
    }

    /** Standard errors as published beside the formula: 3.52 points for men, 3.61 for women. */
    @Test
    void carries_its_published_error() {
        assertThat(HodgdonFriedl1999.of(inches(Sex.MALE, 70, 15, 34, 0))
                        .orElseThrow()
                        .errorPoints())
                .isEqualTo(3.52);
        assertThat(HodgdonFriedl1999.of(inches(Sex.FEMALE, 65, 13, 29, 38))
                        .orElseThrow()
                        .errorPoints())
                .isEqualTo(3.61);
    }

    /** The form is in inches. The same girths in cm (2.54 cm, exact) are the same body. */
    @ParameterizedTest
    @CsvSource({"MALE, 70, 15, 34, 0", "FEMALE, 65, 13, 29, 38"})
    void inches_and_centimetres_are_the_same_body(Sex sex, double height, double neck, double waist, double hips) {
        double cm = percent(centimetres(sex, height * 2.54, neck * 2.54, waist * 2.54, hips * 2.54));
        assertThat(cm).isCloseTo(percent(inches(sex, height, neck, waist, hips)), within(1e-9));
    }

    /**
     * With cm put into the formula other constants would be needed, 30.295 and -104.912 (arithmetic). With them the answer is the
     * same; with the constants for inches it is 6.5 points too high for this man and 26.5 for this woman.
     */
    @Test
    void a_form_in_centimetres_has_other_constants() {
        double man = 86.010 * Math.log10((34 - 15) * 2.54) - 70.041 * Math.log10(70 * 2.54);
        double woman = 163.205 * Math.log10((29 + 38 - 13) * 2.54) - 97.684 * Math.log10(65 * 2.54);
        assertThat(percent(inches(Sex.MALE, 70, 15, 34, 0))).isCloseTo(man + 30.295, within(0.001));
        assertThat(percent(inches(Sex.FEMALE, 65, 13, 29, 38))).isCloseTo(woman - 104.912, within(0.001));
        assertThat(man + 36.76 - percent(inches(Sex.MALE, 70, 15, 34, 0))).isCloseTo(6.5, within(0.1));
        assertThat(woman - 78.387 - percent(inches(Sex.FEMALE, 65, 13, 29, 38))).isCloseTo(26.5, within(0.1));
    }

    /**
     * Hodgdon and Beckett's form of 1984 in cm through body density, in the three digits that were checked: men D = 1.032 - 0.191
     * log10(abdomen - neck) + 0.155 log10(height), women D = 1.296 - 0.350 log10(waist + hips - neck) + 0.221 log10(height), fat % =
     * 495 / D - 450. Between 5 and 45 % the two stay within 0.9 points (largest: 0.83), far inside their errors.
     */
    @Test
    void two_published_forms_agree() {
        int compared = 0;
        for (double height = 150; height <= 195; height += 5) {
            for (double neck = 32; neck <= 44; neck += 3) {
                for (double waist = 66; waist <= 120; waist += 6) {
                    double densityMan = 1.032 - 0.191 * Math.log10(waist - neck) + 0.155 * Math.log10(height);
                    compared += compare(centimetres(Sex.MALE, height, neck, waist, 0), densityMan, 0.9);
                    double hips = waist + 20;
                    double densityWoman = 1.296 - 0.350 * Math.log10(waist + hips - neck) + 0.221 * Math.log10(height);
                    compared += compare(centimetres(Sex.FEMALE, height, neck, waist, hips), densityWoman, 0.9);
                }
            }
        }
        assertThat(compared).isGreaterThan(500);
    }

    private static int compare(Body body, double density, double points) {
        double fat = percent(body);
        if (fat < 5 || fat > 45) {
            return 0;
        }
        assertThat(495 / density - 450).as("%s", body).isCloseTo(fat, within(points));
        return 1;
    }

    /** Some copies of the formula add the neck of women. A thicker neck means less fat for both sexes. */
    @Test
    void the_neck_is_taken_off() {
        assertThat(percent(inches(Sex.FEMALE, 65, 14, 29, 38))).isLessThan(percent(inches(Sex.FEMALE, 65, 13, 29, 38)));
        assertThat(percent(inches(Sex.MALE, 70, 16, 34, 0))).isLessThan(percent(inches(Sex.MALE, 70, 15, 34, 0)));
    }

    @Test
    void needs_the_hips_of_women_only() {
        assertThat(HodgdonFriedl1999.of(inches(Sex.FEMALE, 65, 13, 29, 0))).isEmpty();
        assertThat(HodgdonFriedl1999.of(inches(Sex.MALE, 70, 15, 34, 0))).isPresent();
        assertThat(HodgdonFriedl1999.of(new Body(Sex.MALE, 30, new Mass(80), new Length(180), Optional.empty())))
                .isEmpty();
    }

    @Test
    void an_answer_that_cannot_be_is_said_to_be_one() {
        BodyFatEstimate thin =
                HodgdonFriedl1999.of(inches(Sex.MALE, 70, 15, 20, 0)).orElseThrow();
        assertThat(thin.possible()).isFalse();
        assertThat(thin.fat().percent()).isEqualTo(3);
        assertThat(thin.caveats()).anyMatch(text -> text.contains("cannot be: measure again"));
        assertThat(HodgdonFriedl1999.of(inches(Sex.MALE, 70, 15, 34, 0))
                        .orElseThrow()
                        .possible())
                .isTrue();
    }
}
