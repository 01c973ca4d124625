package batchwright.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The three worked days of FAO/WHO/UNU, Human energy requirements, Rome 2004, Table 5.1: hours and physical activity ratios from
 * memory, whose sums 36.7, 42.2 and 53.9 and PALs 1.53, 1.76 and 2.25 are those published.
 */
class DiaryPublishedTest {
    private static final String SEDENTARY = "8x1.0 1x2.3 1x1.5 1x2.1 8x1.5 1x2.8 1x2.0 1x3.2 2x1.4";
    private static final String ACTIVE = "8x1.0 1x2.3 1x1.5 8x2.2 1x1.2 1x3.2 1x4.2 3x1.4";
    private static final String VIGOROUS = "8x1.0 1x2.3 1x1.4 1x2.1 6x4.1 1x4.4 1x2.3 1x3.2 4x1.4";

    @ParameterizedTest
    @CsvSource({SEDENTARY + ", 1.53", ACTIVE + ", 1.76", VIGOROUS + ", 2.25"})
    void the_worked_days_come_to_the_published_pal(String day, double pal) {
        assertThat(diary(day, 1).pal()).isEqualTo(pal);
    }

    @ParameterizedTest
    @CsvSource({SEDENTARY + ", 36.7", ACTIVE + ", 42.2", VIGOROUS + ", 53.9"})
    void the_worked_days_add_up(String day, BigDecimal sum) {
        BigDecimal cost =
                diary(day, 1).entries().stream().map(Diary.Entry::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(cost).isEqualByComparingTo(sum.multiply(BigDecimal.valueOf(60)));
    }

    @Test
    void the_levels_are_the_worked_days() {
        assertThat(Stream.of(SEDENTARY, ACTIVE, VIGOROUS)
                        .map(day -> diary(day, 1).pal()))
                .containsExactly(FaoLevel.SEDENTARY.pal(), FaoLevel.ACTIVE.pal(), FaoLevel.VIGOROUS.pal());
    }

    @Test
    void a_week_of_seven_like_days_is_that_day() {
        assertThat(diary(SEDENTARY, 7).isWeek()).isTrue();
        assertThat(diary(SEDENTARY, 7).pal()).isEqualTo(diary(SEDENTARY, 1).pal());
    }

    /**
     * The sedentary day with METs in the place of ratios: 37.25 / 24 = 1.552 beside 1.529. In the active day eight hours on the feet
     * count 3.0 METs in the Compendium (11600) and 2.2 in FAO's table: 48.35 / 24 = 2.015 beside 1.758.
     */
    @Test
    void mets_in_the_place_of_ratios_move_the_worked_days() {
        Diary sedentary = Diaries.of(
                "sleeping 8, dressing .5, showering .5, eating 1, cooking_light 1, office_work 8, cleaning 1,"
                        + " driving 1, walking 1, sitting 2");
        Diary active =
                Diaries.of("sleeping 8, dressing .5, showering .5, eating 1, standing_work 8, sitting 1, walking 1,"
                        + " circuits 1, sitting 3");
        assertThat(sedentary.pal()).isCloseTo(FaoLevel.SEDENTARY.pal(), within(0.03));
        assertThat(active.pal() - FaoLevel.ACTIVE.pal()).isBetween(0.2, 0.3);
    }

    @Test
    void refuses_a_day_that_is_not_full() {
        var sleep = Diaries.entry(Diaries.listed("sleeping"), 23);
        assertThatThrownBy(() -> new Diary(List.of(sleep))).hasMessageContaining("1380");
    }

    private static Diary diary(String hoursByRatio, int days) {
        return new Diary(Stream.of(hoursByRatio.split(" ", -1))
                .map(part -> part.split("x", -1))
                .map(part -> Diaries.entry(
                        new ListedActivity("", "", new BigDecimal(part[1]), ""), Double.parseDouble(part[0]) * days))
                .toList());
    }
}
