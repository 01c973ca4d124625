package batchwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.learning.Learned;
import batchwright.needs.weighing.SixWeeks;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Test;

/** The page of one eater: pictures for whom there are figures, and none for whom there are none. */
class NeedsPageTest {
    private static String page(Learned learned) {
        return NeedsPage.of(learned.needs(), Optional.of(learned));
    }

    /** The Nu checker, the one behind the W3C's. */
    private static String errors(String page) throws Exception {
        var checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        return checker.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void six_weeks_are_pictures_with_tables() throws Exception {
        String page = page(SixWeeks.of(42));

        assertThat(page)
                .contains(
                        "What the scale says", "The equation and your weighings", "What you ate", "A step is offered");
        assertThat(page.split("<svg", -1)).hasSize(6);
        assertThat(page.split("<table", -1)).hasSize(6);
        assertThat(HtmlReport.isIn(page)).isTrue();
        assertThat(errors(page)).isEmpty();
    }

    @Test
    void the_first_week_claims_no_energy() {
        assertThat(page(SixWeeks.of(7)))
                .contains("Weighings say more after 14 days")
                .doesNotContain("You burn", "The equation and your weighings");
    }

    @Test
    void who_loses_too_fast_reads_of_a_doctor() {
        Learned falling = SixWeeks.falling();

        assertThat(page(falling)).contains("Your weight falls", "doctor").doesNotContain("A step is offered");
    }

    @Test
    void without_weighings_there_is_the_target() throws Exception {
        Needs needs = SixWeeks.of(7).needs();
        String page = NeedsPage.of(needs, Optional.empty());

        assertThat(page).contains("Target, each day", "Where weight goes").doesNotContain("What your weighings say");
        assertThat(errors(page)).isEmpty();
    }
}
