package batchwright.report.needs;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.Golden;
import batchwright.needs.learning.Learned;
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
    void a_page_gets_two_pictures_each_with_its_table() {
        List<Figure> figures = LearnedFigures.of(SixWeeks.of(42));

        assertThat(figures)
                .extracting(Figure::heading)
                .containsExactly("What the scale says", "What holds your weight");
        assertThat(figures).allSatisfy(figure -> {
            Svg picture = figure.picture().orElseThrow();
            assertThat(picture.says()).isEqualTo(figure.says());
            assertThat(figure.table().orElseThrow().rows()).hasSize(6);
        });
        long dots = figures.get(0).picture().orElseThrow().shapes().stream()
                .filter(Svg.Circle.class::isInstance)
                .count();
        assertThat(dots).isEqualTo(SixWeeks.of(42).seen().evidence().weighings());
        assertThat(LearnedFigures.of(SixWeeks.of(7))).hasSize(1);
    }
}
