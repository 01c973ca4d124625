package batchwright.needs.projection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProjectionTest {
    private static final double PAL = 1.6;
    private static final Body MAN = TestEater.body(Sex.MALE, 85, 180, 35, 22.0);

    /** At a total of 2600 kcal, give or take some. */
    private static Projection of(Body body, double errorKcal, double intakeKcal, int weeks) {
        var total = new TotalBand(new Energy(2600 - errorKcal), new Energy(2600), new Energy(2600 + errorKcal));
        return Projection.of(body, total, PAL, new Energy(intakeKcal), weeks);
    }

    private static List<String> codes(Projection projection) {
        return projection.cautions().stream().map(Caution::code).toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 12, 104})
    void has_every_week_from_now_on(int weeks) {
        List<ProjectedWeek> path = of(MAN, 200, 2300, weeks).path();

        assertThat(path).hasSize(weeks + 1);
        for (int week = 0; week <= weeks; week++) {
            assertThat(path.get(week).week()).isEqualTo(week);
        }
    }

    @Test
    void starts_from_the_body_as_it_is() {
        ProjectedWeek now = of(MAN, 200, 2300, 12).now();

        assertThat(now.likely().weightKg()).isCloseTo(85, within(1e-9));
        assertThat(now.likely().fatKg()).isCloseTo(0.22 * 85, within(1e-9));
        assertThat(now.lightest()).contains(now.likely());
        assertThat(now.heaviest()).isEqualTo(now.likely());
    }

    @ParameterizedTest
    @ValueSource(doubles = {2100, 2600, 2900})
    void the_band_is_around_the_line_and_widens(double intake) {
        double before = 0;
        for (ProjectedWeek week : of(MAN, 200, intake, 52).path()) {
            double lightest = week.lightest().orElseThrow().weightKg();
            double width = week.heaviest().weightKg() - lightest;
            if (week.week() > 0) {
                assertThat(week.likely().weightKg())
                        .isBetween(lightest, week.heaviest().weightKg());
                assertThat(width).isGreaterThan(before);
            }
            before = width;
        }
    }

    /** A body whose total is 200 kcal higher and which eats the same, is one that eats 200 kcal less than its total. */
    @Test
    void the_lightest_is_who_needs_more() {
        Projection projection = of(MAN, 200, 2600, 12);
        var higher = new TotalBand(new Energy(2800), new Energy(2800), new Energy(2800));
        Projection needsMore = Projection.of(MAN, higher, PAL, new Energy(2600), 12);

        assertThat(projection.last().lightest()).contains(needsMore.last().likely());
    }

    @Test
    void fat_as_measured_is_not_doubted_and_an_estimate_is() {
        Projection measured = of(MAN, 200, 2300, 12);
        Projection estimated = of(TestEater.body(Sex.MALE, 85, 180, 35), 200, 2300, 12);

        assertThat(codes(measured)).doesNotContain("body_fat_estimated");
        assertThat(codes(estimated)).contains("body_fat_estimated");
        // Deurenberg et al. 1991: 1.20 x 26.235 + 0.23 x 35 - 10.8 - 5.4 = 23.33 %
        assertThat(estimated.fat().share().percent()).isCloseTo(23.33, within(0.01));
    }

    @Test
    void appetite_is_mentioned_to_those_who_lose() {
        assertThat(codes(of(MAN, 200, 2300, 12)))
                .containsExactly("projection_is_a_model", "appetite_grows", "lean_mass_is_not_muscle");
        assertThat(codes(of(MAN, 200, 2600, 12))).doesNotContain("appetite_grows");
        assertThat(codes(of(MAN, 200, 2900, 12))).doesNotContain("appetite_grows");
    }

    @ParameterizedTest(name = "{0} {1} kg, {3} % fat")
    @CsvSource(textBlock = """
        # sex,  kg, cm, fat %, stops for
        FEMALE, 56, 170, 25, 'BMI'
        MALE,   66, 180, 20, 'BMI'
        FEMALE, 62, 165, 18, 'body fat'
        MALE,   75, 178, 10, 'body fat'
        """)
    void stops_before_a_body_is_too_lean(Sex sex, double kg, double cm, double fat, String why) {
        Body body = TestEater.body(sex, kg, cm, 30, fat);
        Projection projection = of(body, 0, 2100, 104);
        double metres = cm / 100;

        assertThat(projection.last().week()).isLessThan(104);
        assertThat(codes(projection)).first().isEqualTo("projection_stops");
        assertThat(codes(projection)).doesNotContain("projection_low_end_stops");
        assertThat(projection.cautions().get(0).text()).contains(why);
        for (ProjectedWeek week : projection.path()) {
            assertThat(week.likely().fatPercent()).isGreaterThanOrEqualTo(sex == Sex.MALE ? 8 : 16);
            assertThat(week.likely().weightKg() / metres / metres).isGreaterThanOrEqualTo(18.5);
        }
    }

    @Test
    void says_both_when_the_lightest_stops_before_the_line_does() {
        Body body = TestEater.body(Sex.MALE, 66, 180, 30, 20.0);

        assertThat(codes(of(body, 200, 2100, 104))).startsWith("projection_stops", "projection_low_end_stops");
    }

    @Test
    void leaves_out_the_lightest_when_only_that_is_too_lean() {
        Body body = TestEater.body(Sex.FEMALE, 58, 170, 30, 26.0);
        Projection projection = of(body, 300, 2600, 52);

        assertThat(projection.last().week()).isEqualTo(52);
        assertThat(projection.last().lightest()).isEmpty();
        assertThat(codes(projection)).first().isEqualTo("projection_low_end_stops");
    }

    @Test
    void who_is_underweight_and_gains_is_followed() {
        Body thin = TestEater.body(Sex.FEMALE, 50, 170, 30, 18.0);

        assertThat(of(thin, 0, 2900, 26).last().week()).isEqualTo(26);
        Projection loses = of(thin, 0, 2500, 26);
        assertThat(loses.last().week()).isZero();
        assertThat(loses.cautions().get(0).text()).startsWith("Nothing is projected, because in week 1 the BMI");
    }

    /** "Well under 0.1 s": the best of some runs, for other work may share the machine. */
    @Test
    void takes_no_time_to_speak_of() {
        long best = Long.MAX_VALUE;
        for (int run = 0; run < 20; run++) {
            long from = System.nanoTime();
            of(MAN, 200, 2300, 104);
            best = Math.min(best, System.nanoTime() - from);
        }

        assertThat(best).isLessThan(50_000_000);
    }
}
