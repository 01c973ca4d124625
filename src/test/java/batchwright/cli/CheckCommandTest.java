package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** check: silent when all is right, else every problem and how many there are. */
class CheckCommandTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() {
        Folders.starter(here);
    }

    @Test
    void silent_when_all_is_right() {
        Cli.Result result = Cli.in(here).run("check");

        assertThat(result.code()).isZero();
        assertThat(result.both()).isEmpty();
    }

    @Test
    void a_warning_alone_is_told_and_ends_with_0() throws IOException {
        Folders.replace(
                here.resolve("foods/shop.csv"),
                "white_rice,corner market,bag,907,2.19",
                "white_rice,corner market,bag,907,219");

        Cli.Result result = Cli.in(here).run("check");

        assertThat(result.code()).isZero();
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("shop.csv:12:").contains("2.19\n").endsWith("\n1 warning in 1 file\n");
    }

    @Test
    void the_last_line_counts_all_files() throws IOException {
        Folders.replace(
                here.resolve("foods/shop.csv"),
                "white_rice,corner market,bag,907,2.19",
                "white_rice,corner market,bag,907,219");
        Folders.replace(here.resolve("foods/shop.csv"), "quinoa,corner", "quinao,corner");
        Folders.replace(here.resolve("foods/dishes/lentil_ragu.yaml"), "kind: main", "kind: supper");

        Cli.Result result = Cli.in(here).run("check");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).endsWith("\n2 errors, 1 warning in 2 files\n");
    }

    /** Ten problems of a file are shown, all are counted. */
    @Test
    void what_a_long_list_leaves_out_is_counted() throws IOException {
        Folders.replace(here.resolve("foods/shop.csv"), ",corner market,", ",,");

        Cli.Result result = Cli.in(here).run("check");
        JsonNode json = Shape.parse(Cli.in(here).run("check", "--json").out());
        long lines = java.nio.file.Files.readString(here.resolve("foods/shop.csv"))
                .lines()
                .filter(line -> line.matches("[a-z0-9_]+,,.*"))
                .count();

        assertThat(result.err())
                .contains("shop.csv: error: %s more errors in this file".formatted(lines - 10))
                .endsWith("\n%s errors in 1 file\n".formatted(lines));
        assertThat(json.get("errors").intValue()).isEqualTo((int) lines);
    }

    @Test
    void in_json_the_counts_stand_beside_the_problems() throws IOException {
        assertThat(Shape.parse(Cli.in(here).run("check", "--json").out()).toString())
                .isEqualTo(
                        "{\"schema\":\"batchwright.check/1\",\"status\":\"right\",\"errors\":0,\"warnings\":0,\"files\":0,"
                                + "\"problems\":[]}");

        Folders.replace(
                here.resolve("foods/shop.csv"),
                "white_rice,corner market,bag,907,2.19",
                "white_rice,corner market,bag,907,219");
        JsonNode json = Shape.parse(Cli.in(here).run("check", "--json").out());

        Shape.check(
                json,
                "{\"status\": \"=right\", \"errors\": \"whole\", \"warnings\": \"whole\", \"files\": \"whole\","
                        + " \"problems\": [{\"severity\": \"=warning\", \"path\": \"text\", \"line\": \"whole\"}]}");
        assertThat(json.get("warnings").intValue()).isEqualTo(1);
    }
}
