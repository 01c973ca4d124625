package batchwright.needs.bodyfat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.person.Tape;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which body fat is used, and what rests on it. Man, 35 years, 88 kg, 70 in; neck 15 in, waist 34 in: tape 17.513 %. */
class BodyFatFindingTest {
    private static final String TAPE = "tape, Hodgdon-Friedl 1999";
    private static final String BMI = "Deurenberg 1991";
    private static final Tape MEASURES = new Tape(Length.ofInches(15), Length.ofInches(34), Optional.empty());
    private static final Tape SLIPPED = new Tape(Length.ofInches(15), Length.ofInches(18), Optional.empty());
    private static final BodyFat MEASURED = new BodyFat.Measured(Share.ofPercent(16));

    private static Body body(Optional<BodyFat> fat, Optional<Tape> tape) {
        return new Body(Sex.MALE, 35, new Mass(88), Length.ofInches(70), fat, tape);
    }

    private static Body asking(Optional<Tape> tape) {
        return body(Optional.of(BodyFat.ASKED_FOR), tape);
    }

    private static List<String> others(BodyFatFinding finding) {
        return finding.secondOpinions().stream().map(BodyFatEstimate::method).toList();
    }

    private static Optional<String> used(BodyFatFinding finding) {
        return finding.estimate().map(BodyFatEstimate::method);
    }

    @Test
    void a_measured_figure_goes_before_the_tape() {
        Body body = body(Optional.of(MEASURED), Optional.of(MEASURES));
        BodyFatFinding finding = BodyFatFinding.of(body);
        assertThat(finding.body()).isEqualTo(body);
        assertThat(finding.estimate()).isEmpty();
        assertThat(others(finding)).containsExactly(TAPE, BMI);
    }

    @Test
    void an_estimate_goes_by_tape_when_there_is_one_and_else_by_bmi() {
        BodyFatFinding byTape = BodyFatFinding.of(asking(Optional.of(MEASURES)));
        assertThat(used(byTape)).contains(TAPE);
        assertThat(byTape.body().bodyFat())
                .hasValueSatisfying(fat -> assertThat(fat.percent()).isCloseTo(17.513, within(0.001)));
        assertThat(others(byTape)).containsExactly(BMI);

        BodyFatFinding byBmi = BodyFatFinding.of(asking(Optional.empty()));
        assertThat(used(byBmi)).contains(BMI);
        assertThat(others(byBmi)).isEmpty();
    }

    /** Without being asked, nothing is estimated: a tape alone is shown and not used. */
    @Test
    void nothing_is_estimated_silently() {
        BodyFatFinding tapeOnly = BodyFatFinding.of(body(Optional.empty(), Optional.of(MEASURES)));
        assertThat(tapeOnly.body().bodyFat()).isEmpty();
        assertThat(others(tapeOnly)).containsExactly(TAPE, BMI);

        BodyFatFinding nothing = BodyFatFinding.of(body(Optional.empty(), Optional.empty()));
        assertThat(nothing.body().bodyFat()).isEmpty();
        assertThat(nothing.secondOpinions()).isEmpty();
    }

    @Test
    void a_tape_that_cannot_be_is_not_used() {
        BodyFatFinding finding = BodyFatFinding.of(asking(Optional.of(SLIPPED)));
        assertThat(used(finding)).contains(BMI);
        assertThat(others(finding)).containsExactly(TAPE);
    }

    @Test
    void the_same_body_again_has_the_same_answer() {
        BodyFatFinding once = BodyFatFinding.of(asking(Optional.of(MEASURES)));
        assertThat(BodyFatFinding.of(once.body())).isEqualTo(once);
    }

    /**
     * By tape: FFM 88 x (1 - 0.17513) = 72.589 kg, Cunningham 1991 370 + 21.6 x 72.589 = 1937.9. The error of 3.52 points is 3.098 kg or
     * 66.9 kcal; with 10 % of its own, 193.8, the equation is right to 205.0.
     */
    @Test
    void a_tape_chooses_the_resting_energy_and_adds_its_error() {
        Needs needs = TestEater.of(asking(Optional.of(MEASURES))).needs();
        assertThat(needs.resting().get(0)).satisfies(inUse -> {
            assertThat(inUse.equation()).isEqualTo("Cunningham 1991");
            assertThat(inUse.perDay().kcal()).isCloseTo(1937.9, within(0.1));
            assertThat(inUse.errorKcal()).isCloseTo(205.0, within(0.1));
            assertThat(inUse.caveats()).contains("body fat by " + TAPE);
        });
        assertThat(needs.restingKcalPerFatPoint() * 3.52).isCloseTo(66.9, within(0.1));
        assertThat(needs.cautions()).anyMatch(caution -> caution.code().equals("body_fat_estimated"));
    }

    /** From BMI: the same equation, the same error and the same protein as without any body fat. */
    @Test
    void bmi_does_not_choose_the_resting_energy() {
        TestEater asked = TestEater.of(asking(Optional.empty())).goal(new Goal.PercentAWeek(-0.5));
        TestEater silent =
                TestEater.of(body(Optional.empty(), Optional.empty())).goal(new Goal.PercentAWeek(-0.5));
        Needs needs = asked.needs();
        assertThat(needs.resting().get(0)).isEqualTo(silent.needs().resting().get(0));
        assertThat(needs.target()).isEqualTo(silent.needs().target());
        assertThat(needs.restingKcalPerFatPoint()).isZero();
        assertThat(needs.cautions()).anyMatch(caution -> caution.code().equals("body_fat_estimated"));
        assertThat(needs.resting()).anyMatch(e -> e.caveats().contains("body fat by " + BMI));
    }

    /** 21.6 kcal for each kg of FFM, and a point of 88 kg is 0.88 kg: 19.008 kcal; 4.5 points when the method is not said. */
    @Test
    void a_figure_has_the_error_of_its_method_and_a_price_of_a_point() {
        Needs needs =
                TestEater.of(body(Optional.of(MEASURED), Optional.empty())).needs();
        double own = needs.resting().get(0).perDay().kcal() * 0.10;
        assertThat(needs.resting().get(0).errorKcal()).isCloseTo(Math.hypot(own, 4.5 * 19.008), within(1e-9));
        assertThat(needs.restingKcalPerFatPoint()).isCloseTo(19.008, within(1e-9));
        assertThat(needs.cautions()).noneMatch(caution -> caution.code().equals("body_fat_estimated"));
    }
}
