package batchwright.report.needs;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.dynamics.BodyState;
import batchwright.needs.projection.ProjectedWeek;
import batchwright.report.print.Page;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn, on paths that are known without any model. */
class ProjectionChartTest {
    private static BodyState body(double kg) {
        return new BodyState(kg / 5, kg - kg / 5, 0, 0, 0);
    }

    /** From 80 kg, so much more each week on the line and so much more or less at the ends of the band. */
    private static List<ProjectedWeek> path(int weeks, double start, double line, double band) {
        return IntStream.rangeClosed(0, weeks)
                .mapToObj(week -> new ProjectedWeek(
                        week,
                        body(start + week * line),
                        Optional.of(body(start + week * (line - band))),
                        body(start + week * (line + band))))
                .toList();
    }

    private static String drawn(List<ProjectedWeek> path) {
        return ProjectionChart.lines(path).stream()
                .map(line -> line.stripTrailing() + "\n")
                .collect(Collectors.joining());
    }

    /**
     * Rows of 0.25 kg, twelve columns a week: the line leaves the row of 80 below 79.875 kg, after a quarter of a week or column 3; the
     * upper end of the band after half a week or column 6.
     */
    @Test
    void a_line_in_its_band_with_figures_at_its_ends() {
        assertThat(drawn(path(4, 80, -0.5, 0.25))).isEqualTo("""
                |    kg
                |    80 |####:::
                |       |   :######:::::::::
                |  79.5 |       :::######:::::::::::::::
                |       |           :::::######:::::::::::::::::::::
                |    79 |               :::::::######::::::::::::::::::::: 79.0 if you need less
                |       |                   :::::::::######:::::::::::::::
                |  78.5 |                       :::::::::::######:::::::::
                |       |                           :::::::::::::######:::
                |    78 |                               :::::::::::::::### 78.0 as estimated
                |       |                                   ::::::::::::::
                |  77.5 |                                       ::::::::::
                |       |                                           ::::::
                |    77 |                                               :: 77.0 if you need more
                |       ++-----------+-----------+-----------+-----------+
                |        0           1           2           3           4  weeks
                """.replaceAll("(?m)^[|]", ""));
    }

    /** A total without doubt: one line, one figure. */
    @Test
    void no_band_is_a_line_alone() {
        String chart = drawn(path(12, 70, 0, 0));

        assertThat(chart).contains("70 |" + "#".repeat(49) + " 70.0 as estimated\n");
        assertThat(chart).doesNotContain(":").doesNotContain("need");
    }

    @Test
    void a_lower_end_that_is_not_known_has_no_figure() {
        List<ProjectedWeek> path = path(8, 60, -0.2, 0.2).stream()
                .map(w -> w.week() < 5 ? w : new ProjectedWeek(w.week(), w.likely(), Optional.empty(), w.heaviest()))
                .toList();

        assertThat(drawn(path))
                .contains("58.4 as estimated", "60.0 if you need less")
                .doesNotContain("if you need more");
    }

    @ParameterizedTest(name = "{0} weeks from {1} kg")
    @CsvSource({
        "1, 74, 0.2, 0.01",
        "2, 80, -1, 0.2",
        "7, 300, -2, 0.5",
        "17, 64, 0, 0.2",
        "25, 120, -1, 0.3",
        "48, 100.4, -0.4, 0.2",
        "53, 99.8, 0.01, 0.01",
        "104, 250, -0.9, 0.4"
    })
    void fits_a_terminal_whatever_the_weeks(int weeks, double start, double line, double band) {
        List<String> lines = ProjectionChart.lines(path(weeks, start, line, band));

        assertThat(lines).allMatch(text -> text.length() <= Page.WIDTH);
        assertThat(lines).hasSizeBetween(4, 20);
        assertThat(lines).allMatch(text -> text.chars().allMatch(c -> c >= ' ' && c <= '~'));
        assertThat(lines.get(lines.size() - 1)).endsWith(weeks + (weeks == 1 ? "  week" : "  weeks"));
        assertThat(String.join("\n", lines)).contains(" as estimated");
    }

    /** Every column has one mark of the line, and the band stands on both sides without a hole. */
    @Test
    void the_line_is_in_every_column() {
        List<String> lines = ProjectionChart.lines(path(12, 80, -0.3, 0.2));
        int first = lines.get(1).indexOf('|') + 1;
        for (int column = first; column < first + 49; column++) {
            int at = column;
            String down = lines.stream()
                    .skip(1)
                    .limit(lines.size() - 3L)
                    .map(text -> at < text.length() ? text.substring(at, at + 1) : " ")
                    .reduce("", String::concat);
            assertThat(down.strip()).matches(":*#:*");
        }
    }
}
