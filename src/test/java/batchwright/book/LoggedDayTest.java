package batchwright.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is not known is missing, not zero. */
class LoggedDayTest {
    private static LoggedDay day(String... lines) {
        List<LoggedDay> days = LoggedDay.of(BookOf.lines(lines), "anna");
        assertThat(days).hasSize(1);
        return days.get(0);
    }

    @Test
    void planned_and_unplanned_are_apart() {
        LoggedDay day = day(
                "2026-11-29 weighed anna 74.2 kg",
                "2026-11-29 ate anna 2 ragu, 1964 kcal",
                "2026-11-29 ate anna 56 g peanuts, 329 kcal",
                "2026-11-29 ate anna out 900 kcal",
                "2026-11-29 ate ben 1 ragu, 982 kcal",
                "2026-11-29 ill anna",
                "2026-11-29 ate anna nothing else");

        assertThat(day.kg()).hasValue(74.2);
        assertThat(day.plannedKcal()).isEqualTo(2293);
        assertThat(day.unplannedKcal()).isEqualTo(900);
        assertThat(day.complete()).isTrue();
        assertThat(day.marks()).containsExactly(Event.Mark.ILL);
    }

    @Test
    void a_day_is_complete_only_when_the_book_says_so() {
        assertThat(day("2026-11-29 ate anna 2 ragu, 1964 kcal").complete()).isFalse();
        assertThat(day("2026-11-29 ate anna 2 ragu", "2026-11-29 ate anna nothing else")
                        .complete())
                .isFalse();
        assertThat(day("2026-11-29 ate anna nothing else", "2026-11-29 ate anna not logged")
                        .complete())
                .isFalse();
    }

    @Test
    void the_last_weighing_of_a_day_counts() {
        assertThat(day("2026-11-29 weighed anna 74.9 kg", "2026-11-29 weighed anna 74.2 kg")
                        .kg())
                .hasValue(74.2);
    }
}
