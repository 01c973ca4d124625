package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** plan --model: the files that are written, whatever becomes of the plan. */
class ModelWrittenTest {
    @TempDir
    Path here;

    @BeforeEach
    void one_dish() throws IOException {
        Folders.starter(here);
        Folders.keepDishes(here, "lentil_ragu"); // so that it is quickly proven
    }

    private Cli.Result plan(String... more) {
        List<String> line = new ArrayList<>(List.of("plan", "parent-holding", "--days", "2"));
        line.addAll(List.of(more));
        return Cli.in(here).run(line.toArray(new String[0]));
    }

    @Test
    void the_plan_is_made_as_always_and_the_error_output_says_where_the_model_is() throws IOException {
        Cli.Result without = plan();
        Cli.Result with = plan("--model", "plan.mps");

        assertThat(with.code()).isZero();
        assertThat(with.out()).isEqualTo(without.out());
        assertThat(with.err()).containsPattern("note: the model, \\d+ columns and \\d+ rows, is in .*plan\\.mps");
        assertThat(Files.readString(here.resolve("plan.mps"))).contains("\nENDATA\n");
        assertThat(Files.readString(here.resolve("plan.names.csv"))).contains("column,cook.lentil_ragu,");
    }

    @Test
    void it_is_written_when_there_is_no_plan_and_the_budget_is_a_row_of_it() throws IOException {
        Cli.Result result = plan("--model", "plan.mps", "--budget", "1");

        assertThat(result.code()).isEqualTo(3);
        assertThat(here.resolve("plan.mps")).exists();
        assertThat(Files.readString(here.resolve("plan.names.csv"))).contains(",row,budget,");
    }

    @Test
    void the_same_files_give_the_same_model() throws IOException {
        plan("--model", "one.mps");
        plan("--model", "two.mps");

        assertThat(here.resolve("one.mps")).hasSameBinaryContentAs(here.resolve("two.mps"));
    }

    @Test
    void a_file_of_somebody_else_is_never_overwritten() throws IOException {
        Files.writeString(here.resolve("plan.names.csv"), "mine");

        Cli.Result result = plan("--model", "plan.mps");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("plan.names.csv\" is there already");
        assertThat(here.resolve("plan.mps")).doesNotExist();
        assertThat(here.resolve("plan.names.csv")).hasContent("mine");
    }

    @Test
    void a_file_of_another_ending_or_in_no_folder_is_refused() {
        assertThat(plan("--model", "plan.txt").err()).contains("does not end in .mps");
        assertThat(plan("--model", "nowhere/plan.mps").err()).contains("cannot be written");
        assertThat(plan("--model", "plan.txt").code()).isEqualTo(2);
        assertThat(plan("--model", "nowhere/plan.mps").code()).isEqualTo(2);
    }
}
