package batchwright.report.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.Golden;
import batchwright.needs.learning.Learned;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.SixWeeks;
import batchwright.report.html.LearnedFigures;
import batchwright.report.html.chart.Svg;
import batchwright.report.html.part.Figure;
import batchwright.report.print.Json;
import batchwright.report.print.Page;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a person sees of six weeks, of the first week, and when weight falls too fast. */
class LearnedTextTest {
    private static String text(Learned learned) {
        var page = new Page();
        LearnedText.print(learned, page);
        return page.toString();
    }

    @Test
    void six_weeks() {
        String text = text(SixWeeks.of(42));

        Golden.check(Path.of("src/test/resources/golden/weighings.txt"), text);
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    /** The first week shows weight and the equation, and no figure of energy that weight has not shown yet. */
    @Test
    void one_week() {
        String text = text(SixWeeks.of(7));

        assertThat(text.replaceAll("\\s+", " "))
                .contains("Weighings say more after 14 days", "The target stays.")
                .doesNotContain("You burn", "as it was known");
        assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void who_loses_too_fast_reads_that_first_and_gets_no_step() {
        String text = text(SixWeeks.falling());

        assertThat(text.lines().skip(1).findFirst().orElseThrow()).contains("Your weight falls");
        assertThat(text).contains("doctor").doesNotContain("A step is offered", "The target stays");
    }

    @Test
    void scripts_get_the_same() {
        JsonNode json = LearnedJson.of(SixWeeks.of(42));

        assertThat(json.get("schema").asText()).isEqualTo("batchwright.weight/1");
        assertThat(json.get("days")).hasSize(42);
        assertThat(json.get("advice").get("status").asText()).isEqualTo("offer");
        assertThat(json.get("holds_weight_kcal").get("likely").asInt() % 50).isZero();
        assertThat(Json.text(LearnedJson.of(SixWeeks.falling())))
                .contains("\"status\" : \"stop\"", "weight_falls_fast");
    }

    @Test
    void a_page_gets_pictures_each_with_its_table() {
        List<Figure> figures = LearnedFigures.of(SixWeeks.of(42));

        assertThat(figures)
                .extracting(Figure::heading)
                .containsExactly(
                        "What the scale says",
                        "The equation and your weighings",
                        "What holds your weight",
                        "What you ate");
        assertThat(figures).allSatisfy(figure -> {
            Svg picture = figure.picture().orElseThrow();
            assertThat(picture.says()).isEqualTo(figure.says());
            assertThat(figure.table().orElseThrow().rows())
                    .hasSize(figure.heading().equals("The equation and your weighings") ? 3 : 6);
        });
        long dots = figures.get(0).picture().orElseThrow().shapes().stream()
                .filter(Svg.Circle.class::isInstance)
                .count();
        assertThat(dots).isEqualTo(SixWeeks.of(42).seen().evidence().weighings());
        assertThat(LearnedFigures.of(SixWeeks.of(7)))
                .extracting(Figure::heading)
                .containsExactly("What the scale says", "What you ate");
    }

    /** A column for each recorded day, its two pieces as high as the day's two figures on the axis that is drawn. */
    @Test
    void columns_are_as_high_as_what_was_eaten() {
        Learned learned = SixWeeks.of(42);
        Svg picture = LearnedFigures.of(learned).get(3).picture().orElseThrow();
        List<Svg.Rectangle> pieces = picture.shapes().stream()
                .filter(Svg.Rectangle.class::isInstance)
                .map(Svg.Rectangle.class::cast)
                .toList();
        double axis = picture.shapes().stream()
                .filter(shape -> shape instanceof Svg.Text text && text.text().matches("[1-9]000"))
                .mapToDouble(shape -> Double.parseDouble(((Svg.Text) shape).text()))
                .max()
                .orElseThrow();

        assertThat(pieces).hasSize(2 * 42);
        for (int day = 0; day < 42; day++) {
            DayIntake eaten = learned.seen().trend().get(day).intake();
            double high = Double.parseDouble(pieces.get(2 * day).height())
                    + Double.parseDouble(pieces.get(2 * day + 1).height());
            assertThat(high * axis / 140).isCloseTo(eaten.complete() ? eaten.kcal() : 0, within(axis / 140));
        }
    }
}
