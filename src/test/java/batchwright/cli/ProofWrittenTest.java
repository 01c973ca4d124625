package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** plan --proof and check --proof: the file that is written, and what is said of it once something has changed. */
class ProofWrittenTest {
    private static String right = "";

    @TempDir
    Path here;

    @BeforeAll
    static void a_right_proof(@TempDir Path folder) throws IOException {
        Folders.starter(folder);
        Folders.keepDishes(folder, "lentil_ragu"); // so that it is quickly proven
        Cli.in(folder).run("plan", "parent-holding", "--days", "2", "--proof", "plan.proof");
        right = Files.readString(folder.resolve("plan.proof"));
    }

    @BeforeEach
    void one_dish() throws IOException {
        Folders.starter(here);
        Folders.keepDishes(here, "lentil_ragu");
    }

    private Cli.Result plan(String... more) {
        List<String> line = new ArrayList<>(List.of("plan", "parent-holding", "--days", "2"));
        line.addAll(List.of(more));
        return Cli.in(here).run(line.toArray(new String[0]));
    }

    private Cli.Result check(String... more) {
        List<String> line = new ArrayList<>(List.of("check", "--proof", "plan.proof"));
        line.addAll(List.of(more));
        return Cli.in(here).run(line.toArray(new String[0]));
    }

    private void replace(String file, String regex, String by) throws IOException {
        Path path = here.resolve(file);
        String before = Files.readString(path);
        String after = before.replaceAll(regex, by);
        assertThat(after).isNotEqualTo(before);
        Files.writeString(path, after);
    }

    @Test
    void the_plan_is_made_as_always_and_the_proof_holds() {
        Cli.Result without = plan();
        Cli.Result with = plan("--proof", "plan.proof");

        assertThat(with.code()).isZero();
        assertThat(with.out()).isEqualTo(without.out());
        assertThat(with.err()).contains("Wrote plan.proof: no plan costs less than");
        assertThat(here.resolve("plan.proof")).hasContent(right);
        assertThat(check().code()).isZero();
        assertThat(check().out())
                .startsWith("The proof holds: no plan costs less than")
                .contains("parent-holding, 2 days");
        assertThat(check("--json").out()).contains("\"status\" : \"holds\"", "\"wrong\" : null");
    }

    @Test
    void a_changed_claim_is_found() throws IOException {
        Files.writeString(here.resolve("plan.proof"), right);
        replace("plan.proof", "\"bound_minor\":\\d+", "\"bound_minor\":99999");

        assertThat(check().code()).isEqualTo(2);
        assertThat(check().out()).startsWith("The proof does not hold: ").contains("claimed 99999");
        assertThat(check("--json").out()).contains("\"status\" : \"does_not_hold\"");
    }

    @Test
    void a_changed_question_is_found() throws IOException {
        Files.writeString(here.resolve("plan.proof"), right);
        replace("plan.proof", "\"days\":2", "\"days\":1");

        assertThat(check().code()).isEqualTo(2);
    }

    @Test
    void changed_prices_are_found() throws IOException {
        Files.writeString(here.resolve("plan.proof"), right);
        replace("foods/shop.csv", "(?m)^(\\w+,.*?),\\d+\\.(\\d\\d)(,|$)", "$1,0.$2$3");

        assertThat(check().code()).isEqualTo(2);
        assertThat(check().out()).contains("Either it is not of these files as they are now");
    }

    @Test
    void room_to_spare_belongs_to_the_question() {
        Cli.Result with = plan("--reserve", "50%", "--proof", "plan.proof");

        assertThat(with.code()).isZero();
        assertThat(with.out()).contains("Room to spare: of what is weighed into dishes at least 50 % more");
        assertThat(check().code()).isZero();
    }

    @Test
    void what_is_damaged_is_no_proof() throws IOException {
        Files.writeString(here.resolve("plan.proof"), right);
        replace("plan.proof", "\"leaf\":\\[\\d+,", "\"leaf\":[");

        assertThat(check().code()).isEqualTo(2);
        assertThat(check().err()).contains("is no proof that this version of the program can read");
    }

    @Test
    void a_file_of_somebody_else_is_never_overwritten() throws IOException {
        Files.writeString(here.resolve("plan.proof"), "mine");

        assertThat(plan("--proof", "plan.proof").code()).isEqualTo(2);
        assertThat(here.resolve("plan.proof")).hasContent("mine");
    }

    @Test
    void without_a_plan_there_is_none() {
        Cli.Result result = plan("--proof", "plan.proof", "--budget", "1");

        assertThat(result.code()).isEqualTo(3);
        assertThat(here.resolve("plan.proof")).doesNotExist();
        assertThat(result.err()).contains("No plan: plan.proof is not written");
    }
}
