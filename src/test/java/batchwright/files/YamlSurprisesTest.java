package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.page.Fields;
import batchwright.files.page.YamlPage;
import batchwright.files.value.Problems;
import batchwright.files.value.YesNo;
import batchwright.text.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A value is what the user wrote: the known traps of YAML do not snap. */
class YamlSurprisesTest {
    private final Problems problems = new Problems();

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "NO",
                "yes",
                "off",
                "012",
                "0x1F",
                "1e3",
                "1_000",
                "12:30:45",
                "2026-10-15",
                "null",
                "~",
                ".inf",
                "3.10"
            })
    void plain_words_stay_as_they_are_written(String value) {
        assertThat(value("key: " + value)).contains(value);
        assertThat(value("key: \"" + value + "\"")).contains(value);
    }

    @Test
    void yes_and_no_are_words_and_nothing_else_stands_for_them() {
        assertThat(YesNo.read(Lines.written("No"), problems)).contains(false);
        assertThat(YesNo.read(Lines.written("YES"), problems)).contains(true);
        assertThat(problems.list()).isEmpty();
        for (String other : List.of("true", "false", "off", "y", "n", "0", "")) {
            assertThat(YesNo.read(Lines.written(other), problems)).isEmpty();
        }
        assertThat(problems.errors()).isEqualTo(7);
    }

    @Test
    void a_key_that_is_there_twice_is_refused() {
        value("key: 1\nkey: 2");
        assertThat(problems.list()).singleElement().satisfies(p -> {
            assertThat(p.at().line()).isEqualTo(2);
            assertThat(p.expected()).contains("test.yaml:1");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "key: &a 1",
                "key: *a",
                "a: &a {x: 1}\n<<: *a",
                "key: !!str 1",
                "key: !int [1]",
                "--- \nkey: 1\n---\nkey: 2",
                "? [a]\n: 1",
                "key: [1",
                "\tkey: 1",
                "key:\n\t- 1",
                "key: \"1",
                "key: 'it's'",
                "just words",
                "- a\n- b",
                "",
                "# nothing",
                "%YAML 9.9\n---\nkey: 1",
                "key: |9x\n  a"
            })
    void what_is_refused_is_refused_with_a_problem(String page) {
        assertThat(value(page)).isEmpty();
        assertThat(problems.errors()).isPositive();
    }

    @Test
    @Timeout(2)
    void pages_made_to_keep_a_reader_busy_are_refused_quickly() {
        String bomb =
                "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: [*b,*b,*b,*b,*b,*b,*b,*b,*b]\n";
        for (String page : List.of(
                bomb,
                "key: " + "[".repeat(100_000),
                "key: " + "{a: ".repeat(50_000),
                "- ".repeat(90_000),
                "k: x\n".repeat(90_000))) {
            int before = problems.errors();
            assertThat(value(page)).isEmpty();
            assertThat(problems.errors()).isGreaterThan(before);
        }
    }

    @Test
    void a_page_with_a_long_list_is_read() {
        assertThat(value("key: v\nother: [" + "abc, ".repeat(10_000) + "abc]")).contains("v");
    }

    private Optional<String> value(String page) {
        return YamlPage.read(SourceFile.of("test.yaml", page), problems)
                .flatMap(group ->
                        Fields.ofPage(group, List.of("key", "other"), problems).text("key"))
                .filter(written -> problems.errors() == 0)
                .map(written -> written.text());
    }
}
