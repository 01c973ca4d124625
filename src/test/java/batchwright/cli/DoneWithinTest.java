package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A limit on the time from the start of cooking until all is done, against the order of work that the same answer shows. */
class DoneWithinTest {
    @TempDir
    private Path here;

    @BeforeEach
    void stocked() throws Exception {
        Folders.stocked(here);
    }

    private Cli.Result plan(String... more) {
        List<String> line =
                new ArrayList<>(List.of("plan", "parent-holding", "--days", "2", "--cook", "lentil_ragu,pepper_eggs"));
        line.addAll(List.of(more));
        return Cli.in(here).run(line.toArray(String[]::new));
    }

    @Test
    void the_cheapest_plan_is_taken_when_it_is_done_in_time_and_another_when_it_is_not() {
        JsonNode free = Shape.parse(plan("--json").out());
        int minutes = free.at("/schedule/minutes").intValue();

        Cli.Result same = plan("--json", "--done-within", String.valueOf(minutes));
        JsonNode sameJson = Shape.parse(same.out());
        assertThat(same.code()).isZero();
        assertThat(sameJson.get("cost_minor")).isEqualTo(free.get("cost_minor"));
        assertThat(sameJson.at("/schedule/done_within_minutes").intValue()).isEqualTo(minutes);

        Cli.Result quicker = plan("--json", "--done-within", String.valueOf(minutes - 1));
        JsonNode plan = Shape.parse(quicker.out());
        assertThat(quicker.code()).isIn(0, 3, 4);
        if (plan.get("cost_minor").isNumber()) {
            assertThat(plan.at("/schedule/minutes").intValue()).isLessThan(minutes);
            assertThat(plan.get("cost_minor").longValue())
                    .isGreaterThanOrEqualTo(free.get("cost_minor").longValue());
        }
    }

    /** Nobody fills four containers, washes up and wipes in ten minutes. */
    @Test
    void too_little_time_is_said() {
        Cli.Result result = plan("--done-within", "10");

        assertThat(result.code()).isEqualTo(3);
        assertThat(result.flat())
                .contains("Time of a session: cooking, filling and washing up are done within 10 minutes.");
    }
}
