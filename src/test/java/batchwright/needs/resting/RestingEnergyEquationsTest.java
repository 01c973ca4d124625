package batchwright.needs.resting;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.TestEater;
import batchwright.needs.evidence.Estimate;
import batchwright.person.Body;
import batchwright.person.Sex;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The equations against each other, and what all of them promise. */
class RestingEnergyEquationsTest {
    /** Printed by bands of age, so they jump at 30 and 60 years. */
    private static final Set<String> BY_AGE_BAND = Set.of(
            "Schofield 1985 (FAO/WHO/UNU), weight",
            "Schofield 1985, weight and height",
            "Henry 2005, weight",
            "Henry 2005, weight and height");

    /** Printed by groups of body mass index, so it jumps at 25 and 30, and has none up to 18.5. */
    private static final String BY_BMI = "Mueller 2004, by BMI";

    static Stream<RestingEnergyEquation> all() {
        return RestingEnergyEquations.all().stream();
    }

    /** Adults of 20-70 years, BMI 20-30, with body fat by Deurenberg et al., Br J Nutr 1991;65:105-114. */
    private static List<Body> grid() {
        List<Body> grid = new ArrayList<>();
        for (Sex sex : Sex.values()) {
            double shortest = sex == Sex.MALE ? 165 : 155;
            for (double cm = shortest; cm <= shortest + 25; cm += 5) {
                for (double bmi = 20; bmi <= 30; bmi += 1) {
                    for (double years = 20; years <= 70; years += 5) {
                        double fat = 1.20 * bmi + 0.23 * years - (sex == Sex.MALE ? 10.8 : 0) - 5.4;
                        grid.add(TestEater.body(sex, bmi * cm * cm / 10_000, cm, years, fat));
                    }
                }
            }
        }
        return grid;
    }

    /** Measured on this grid: 0.813 (Owen 1986, a woman of 20, BMI 30) to 1.151 (ten Haaf-Weijs, a woman of 30, BMI 25). */
    @Test
    void agree_within_a_fifth_of_their_median() {
        for (Body body : grid()) {
            double median = median(body);
            assertThat(RestingEnergyEquations.estimates(body))
                    .allSatisfy(estimate -> assertThat(estimate.perDay().kcal() / median)
                            .as("%s for %s", estimate.equation(), body)
                            .isBetween(0.80, 1.16));
        }
    }

    private static double median(Body body) {
        double[] sorted = RestingEnergyEquations.estimates(body).stream()
                .mapToDouble(estimate -> estimate.perDay().kcal())
                .sorted()
                .toArray();
        return sorted[sorted.length / 2];
    }

    @ParameterizedTest
    @MethodSource("all")
    void rise_with_weight(RestingEnergyEquation equation) {
        for (Sex sex : Sex.values()) {
            for (double years = 18; years <= 88; years += 10) {
                for (double kg = 45; kg <= 150; kg += 1) {
                    Body lighter = TestEater.body(sex, kg, 172, years, 22.0);
                    Body heavier = TestEater.body(sex, kg + 1, 172, years, 22.0);
                    if (equation.perDay(lighter).isPresent() && !groupsMeet(equation, lighter, heavier)) {
                        assertThat(equation.perDay(heavier).orElseThrow())
                                .isGreaterThan(equation.perDay(lighter).orElseThrow());
                    }
                }
            }
        }
    }

    private static boolean groupsMeet(RestingEnergyEquation equation, Body lighter, Body heavier) {
        return equation.name().equals(BY_BMI)
                && Stream.of(25.0, 30.0).anyMatch(bmi -> lighter.bmi() <= bmi && heavier.bmi() >= bmi);
    }

    /** A week of age changes resting energy by less than 1 kcal, but at the edges of printed bands, where it does jump. */
    @ParameterizedTest
    @MethodSource("all")
    void change_smoothly_with_age_but_for_printed_bands(RestingEnergyEquation equation) {
        for (Sex sex : Sex.values()) {
            for (int years = 19; years <= 90; years++) {
                Body before = TestEater.body(sex, 70, 172, years - 0.01, 22.0);
                Body after = TestEater.body(sex, 70, 172, years + 0.01, 22.0);
                if (equation.perDay(before).isPresent()) {
                    double jump = Math.abs(equation.perDay(after).orElseThrow().kcal()
                            - equation.perDay(before).orElseThrow().kcal());
                    boolean edge = BY_AGE_BAND.contains(equation.name()) && (years == 30 || years == 60);
                    assertThat(jump > 1)
                            .as("%s at %s, %s", equation.name(), years, sex)
                            .isEqualTo(edge);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void carry_source_and_error(RestingEnergyEquation equation) {
        for (Sex sex : Sex.values()) {
            equation.estimate(TestEater.body(sex, 70, 172, 30, 22.0), false).ifPresent(estimate -> {
                assertThat(estimate.source().text())
                        .containsPattern("(19|20)\\d\\d")
                        .contains("; error: ");
                assertThat(estimate.errorKcal()).isBetween(100.0, 300.0);
                assertThat(estimate.perDay().kcal()).isBetween(1200.0, 2200.0);
            });
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void say_when_a_body_is_not_one_they_were_made_for(RestingEnergyEquation equation) {
        Body centenarianOf200Kg = TestEater.body(Sex.FEMALE, 200, 160, 100, 50.0);
        Body child = TestEater.body(Sex.FEMALE, 15, 100, 4, 20.0);
        assertThat(equation.studied().caveats(child))
                .as(equation.name())
                .anyMatch(caveat -> caveat.startsWith("made for ages ") && caveat.endsWith("not 4.0"));
        equation.studied().limits().stream()
                .filter(limit -> Double.isFinite(limit.most()))
                .forEach(limit -> assertThat(equation.studied().caveats(centenarianOf200Kg))
                        .as(equation.name())
                        .anyMatch(caveat -> caveat.startsWith("made for " + limit.what())));
    }

    /** Mifflin et al. studied 19-78 years. */
    @Test
    void count_both_ends_of_a_studied_range_as_inside() {
        MifflinStJeor1990 mifflin = new MifflinStJeor1990();
        assertThat(mifflin.studied().caveats(TestEater.body(Sex.MALE, 80, 180, 19)))
                .isEmpty();
        assertThat(mifflin.studied().caveats(TestEater.body(Sex.MALE, 80, 180, 78)))
                .isEmpty();
        assertThat(mifflin.studied().caveats(TestEater.body(Sex.MALE, 80, 180, 78.5)))
                .containsExactly("made for ages 19 to 78 years, not 78.5");
    }

    @Test
    void have_names_of_their_own() {
        assertThat(all().map(RestingEnergyEquation::name))
                .doesNotHaveDuplicates()
                .hasSize(15);
    }

    @Test
    void put_mifflin_to_use_when_body_fat_is_not_known() {
        List<Estimate> estimates = RestingEnergyEquations.estimates(TestEater.body(Sex.MALE, 80, 180, 30));
        assertThat(estimates.get(0).equation()).isEqualTo("Mifflin-St Jeor 1990");
        assertThat(estimates).filteredOn(Estimate::used).containsExactly(estimates.get(0));
        assertThat(estimates).extracting(Estimate::equation).noneMatch(name -> name.startsWith("Cunningham"));
    }

    @Test
    void put_cunningham_1991_to_use_when_body_fat_is_known() {
        List<Estimate> estimates = RestingEnergyEquations.estimates(TestEater.body(Sex.FEMALE, 60, 165, 30, 25.0));
        assertThat(estimates.get(0).equation()).isEqualTo("Cunningham 1991");
        assertThat(estimates).filteredOn(Estimate::used).containsExactly(estimates.get(0));
        assertThat(estimates).extracting(Estimate::equation).contains("Mifflin-St Jeor 1990", "Owen 1986");
        assertThat(estimates).extracting(Estimate::equation).doesNotContain("Owen 1987");
    }

    /** At 200 cm, BMI 18.5 is 74 kg. */
    @Test
    void have_no_answer_from_mueller_by_bmi_for_the_thin() {
        assertThat(Equations.named(BY_BMI).perDay(TestEater.body(Sex.MALE, 74, 200, 30)))
                .isEmpty();
        assertThat(Equations.named(BY_BMI).perDay(TestEater.body(Sex.MALE, 74.1, 200, 30)))
                .isPresent();
    }
}
