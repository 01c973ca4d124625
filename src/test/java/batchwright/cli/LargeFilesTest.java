package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files of a size that no hand writes are refused before memory ends, also where there is little of it. */
class LargeFilesTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() {
        Folders.starter(here);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        profiles/pantry.csv  | 1000000 | rolled_oats,450,x | the file is larger than 8 MB
        profiles/pantry.csv  | 1000000 | a,1               | the file has more than 100,000 lines
        profiles/pantry.csv  | 100000  | rolled_oats,450,x | the file has more than 100,000 lines
        profiles/pantry.csv  | 20000   | rolled_oats,450,x | lines
        foods/shop.csv       | 60000   | a,b,c,1,1,USD,,   | lines
        foods/catalogue.csv  | 20000   | a,b               | lines
        """)
    void in_little_memory(String path, int lines, String line, String wrong) throws IOException {
        Path file = here.resolve(path);
        Files.writeString(file, Files.readString(file) + (line + "\n").repeat(lines));

        Cli.Result result = Program.in(here).with("-Xmx64m").run("check");

        assertThat(result.code()).as(result.both()).isEqualTo(2);
        assertThat(result.err()).contains(path + ": error: ").contains(wrong);
        BadCommandLinesTest.assertNoInsides(result);
    }

    /** As many foods as the table may have, in far less memory than they take. */
    @Test
    void too_little_memory_is_said_with_its_cure() throws IOException {
        Path catalogue = here.resolve("foods/catalogue.csv");
        String table = Files.readString(catalogue);
        String oats = table.lines()
                .filter(line -> line.startsWith("rolled_oats,"))
                .findFirst()
                .orElseThrow();
        var many = new StringBuilder(table);
        for (int i = 0; i < 9_000; i++) {
            many.append(oats.replace("rolled_oats,", "oats_" + i + ",")).append('\n');
        }
        Files.writeString(catalogue, many);

        Cli.Result result = Program.in(here).with("-Xmx32m").run("dishes", "--json");

        assertThat(result.code()).as(result.both()).isEqualTo(2);
        assertThat(result.err())
                .startsWith("error: this needs more memory than the ")
                .contains("java -Xmx1024m -jar")
                .doesNotContain("fault");
        assertThat(Shape.parse(result.out()).at("/errors/0/wrong").textValue()).contains("needs more memory");
        BadCommandLinesTest.assertNoInsides(result);
    }

    /** Lists in lists, groups in groups, quotes: nothing of it is followed to its end. */
    @ParameterizedTest
    @CsvSource({"[", "'{a: '", "'- '", "'? '", "'a: ['"})
    void hostile_nesting(String nested) throws IOException {
        Path profile = here.resolve("profiles/desk-cutting.yaml");
        Files.writeString(profile, "eater: " + nested.repeat(60_000));

        Cli.Result result = Program.in(here).with("-Xmx64m", "-Xss512k").run("check");

        assertThat(result.code()).as(result.both()).isEqualTo(2);
        assertThat(result.err()).contains("profiles/desk-cutting.yaml:").doesNotContain("stack", "fault");
    }
}
