package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are not right: every command that reads them says where, ends with 2 and changes nothing. */
class BrokenFilesTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() throws IOException {
        Folders.stocked(here);
    }

    private void assertRefused(String file, List<String> args, String... says) throws IOException {
        Map<String, String> before = Folders.content(here);

        Cli.Result result = Cli.in(here).run(args.toArray(new String[0]));

        assertThat(result.code()).as(result.both()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(file).contains("error: ");
        assertThat(says).allSatisfy(words -> assertThat(result.err()).contains(words));
        BadCommandLinesTest.assertNoInsides(result);
        assertThat(Folders.content(here)).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
        profiles/lifter-gaining.yaml | weight: 74 kg     | weight: 74 stone  | weight
        profiles/lifter-gaining.yaml | activity: active  | activity: actve   | active
        profiles/lifter-gaining.yaml | avoid: []         | avoid: [penut]    | peanut
        profiles/lifter-gaining.yaml | containers_a_day  | containers_a_dya  | containers_a_day
        profiles/pantry.csv          | rolled_oats,450   | rolled_otas,450   | rolled_oats
        profiles/pantry.csv          | rolled_oats,450   | rolled_oats,lots  | lots
        foods/dishes/lentil_ragu.yaml | lentils: 75 g    | lentlis: 75 g     | lentils
        foods/dishes/lentil_ragu.yaml | kind: main       | kind: supper      | main
        """)
    void a_slip_in_a_file_is_shown_in_its_line(String file, String old, String other, String says) throws IOException {
        Folders.replace(here.resolve(file), old, other);

        assertRefused(file + ":", List.of("plan", "lifter-gaining"), says, "^");
        assertRefused(file + ":", List.of("check"), says, "^");
    }

    @ParameterizedTest
    @ValueSource(strings = {"foods/catalogue.csv", "foods/measures.csv", "foods/yields.csv", "foods/shop.csv"})
    void a_table_that_is_missing(String file) throws IOException {
        Files.delete(here.resolve(file));

        for (String command : List.of("dishes", "foods", "check")) {
            assertRefused(file, List.of(command), "there is no such file");
        }
        assertRefused(file, List.of("snack", "430"));
        assertRefused(file, List.of("needs", "lifter-gaining"));
    }

    @Test
    void a_folder_in_place_of_a_file() throws IOException {
        Files.delete(here.resolve("foods/shop.csv"));
        Files.createDirectories(here.resolve("foods/shop.csv"));

        assertRefused("foods/shop.csv", List.of("plan", "lifter-gaining"), "folder");
    }

    @Test
    void bytes_that_are_no_text() throws IOException {
        Files.write(here.resolve("foods/shop.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1, 2, (byte) 0x80});

        assertRefused("foods/shop.csv", List.of("plan", "lifter-gaining"));
    }

    @Test
    void an_empty_profile() throws IOException {
        Files.writeString(here.resolve("profiles/lifter-gaining.yaml"), "");

        assertRefused("profiles/lifter-gaining.yaml", List.of("plan", "lifter-gaining"));
    }

    @Test
    void yaml_that_is_none() throws IOException {
        Files.writeString(here.resolve("profiles/lifter-gaining.yaml"), "eater: [\n\t: {", StandardCharsets.UTF_8);

        assertRefused("profiles/lifter-gaining.yaml", List.of("needs", "lifter-gaining"));
    }

    @Test
    void errors_of_several_files_come_in_one_run() throws IOException {
        Folders.replace(here.resolve("profiles/pantry.csv"), "rolled_oats,450", "rolled_otas,450");
        Folders.replace(here.resolve("foods/dishes/lentil_ragu.yaml"), "kind: main", "kind: supper");
        Folders.replace(here.resolve("profiles/desk-cutting.yaml"), "sex: ", "sexx: ");

        assertRefused("pantry.csv:", List.of("check"), "lentil_ragu.yaml:", "desk-cutting.yaml:");
    }

    @Test
    void errors_in_json_say_where() throws IOException {
        Folders.replace(here.resolve("profiles/pantry.csv"), "rolled_oats,450", "rolled_otas,450");

        Cli.Result result = Cli.in(here).run("plan", "lifter-gaining", "--json");
        JsonNode error = Shape.parse(result.out()).at("/errors/0");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("rolled_otas");
        Shape.check(
                error,
                "{\"severity\": \"=error\", \"wrong\": \"text\", \"cure\": \"text\", \"path\": \"text\", \"line\": \"whole\","
                        + " \"column\": \"whole\", \"nearest\": \"=rolled_oats\"}");
        JsonNode check = Shape.parse(Cli.in(here).run("check", "--json").out());
        assertThat(check.get("status").textValue()).isEqualTo("errors");
        assertThat(check.at("/problems/0/path").textValue()).endsWith("profiles/pantry.csv");
    }

    @Test
    void a_warning_is_told_but_stops_nothing() throws IOException {
        Files.writeString(here.resolve("foods/dishes/soup.yml"), "dish: soup\n");

        Cli.Result check = Cli.in(here).run("check");
        Cli.Result dishes = Cli.in(here).run("dishes");

        assertThat(check.code()).isZero();
        assertThat(check.out()).isEmpty();
        assertThat(check.err()).contains("foods/dishes/soup.yml: warning: ");
        assertThat(dishes.code()).isZero();
        assertThat(dishes.err()).contains("warning: ");
        assertThat(dishes.out()).startsWith("33 dishes.");
    }
}
