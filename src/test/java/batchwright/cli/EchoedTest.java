package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is repeated of arguments, names and files cannot command the terminal, and does not fill it. */
class EchoedTest {
    private static final String HOSTILE = "a\u001b]0;owned\u0007\u009b2J\u202eb\u2066\u200b\r\nerror: c\u2028";
    private static final Pattern OBEYED = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}&&[^\n]]");

    @TempDir
    Path here;

    @BeforeEach
    void files() throws IOException {
        SmallStarter.into(here);
    }

    private static void assertSafe(Cli.Result result) {
        assertThat(OBEYED.matcher(result.both()).find()).as(result.both()).isFalse();
        assertThat(result.both()).doesNotContain("\nerror: c");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "X",
                "needs X",
                "needs X.yaml",
                "needs profiles/X.yaml",
                "needs lifter-gaining --X",
                "needs lifter-gaining --weeks X",
                "needs --data X lifter-gaining",
                "needs lifter-gaining --date X",
                "plan lifter-gaining X",
                "plan lifter-gaining --cook X",
                "plan lifter-gaining --budget X",
                "plan lifter-gaining --report X/r.html",
                "plan lifter-gaining --model X",
                "dishes X",
                "dishes baked_oats --kcal X",
                "dishes baked_oats --kcal 700 --with X",
                "foods X",
                "foods --take X",
                "foods oats --X",
                "snack X",
                "snack 300 --by X",
                "check X",
                "check --json=X",
                "init lifter-gaining X",
                "check --data X"
            })
    void an_argument(String line) {
        List<String> args = new ArrayList<>();
        for (String arg : line.split(" ", -1)) {
            args.add(arg.replace("X", HOSTILE));
        }

        Cli.Result result = Cli.in(here).run(args.toArray(new String[0]));

        assertSafe(result);
        args.add("--ascii");
        assertSafe(Cli.in(here).run(args.toArray(new String[0])));
        args.set(args.size() - 1, "--debug");
        Cli.Result traced = Cli.in(here).run(args.toArray(new String[0]));
        assertThat(OBEYED.matcher(traced.both()).find()).as(traced.both()).isFalse();
        args.replaceAll(arg -> arg.replace(HOSTILE, "x".repeat(4000)));
        assertThat(Cli.in(here)
                        .run(args.subList(0, args.size() - 1).toArray(new String[0]))
                        .both())
                .hasSizeLessThan(5000);
        args.replaceAll(arg -> arg.replace("x".repeat(4000), "x y\n".repeat(17_500)));
        Cli.Result longest = Cli.in(here).run(args.subList(0, args.size() - 1).toArray(new String[0]));
        assertThat(longest.code()).isEqualTo(2);
        assertThat(longest.both()).contains("an argument is ").hasSizeLessThan(300);
    }

    @Test
    void an_argument_of_a_kind_that_is_right_is_answered() {
        Cli.Result result = Cli.in(here).run("foods", "\u202eoats\u001b[2J");

        assertThat(result.code()).isZero();
        assertThat(result.out()).contains("\\u202Eoats\\u001B[2J");
    }

    @Test
    void the_name_of_a_file() throws IOException {
        Files.writeString(here.resolve("foods/dishes/" + HOSTILE + ".yaml"), "dish: [");
        Files.writeString(here.resolve("profiles/" + HOSTILE + ".yml"), "");

        Cli.Result result = Cli.in(here).run("check");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("a\\u001B]0;owned\\u0007\\u009B2J\\u202Eb\\u2066\\u200B");
        assertSafe(result);
    }

    /** Raw in a table or a page, or written as an escape of YAML: a name is what it seems to be, or it is an error. */
    @ParameterizedTest
    @ValueSource(strings = {"\u001b", "\u202e", "\u2066", "\u200b", "\u00ad", "\u2028", "\ufeff"})
    void a_name_in_a_file(String hidden) throws IOException {
        Folders.stock(here);
        Folders.replace(here.resolve("profiles/pantry.csv"), "rolled_oats,", "rolled_" + hidden + "oats,");
        Folders.replace(here.resolve("profiles/lifter-gaining.yaml"), "name: Lifter", "name: Lif" + hidden + "ter");
        Folders.replace(
                here.resolve("foods/dishes/baked_oats.yaml"),
                "dish: baked_oats\nname:",
                "dish: baked_oats\nname: \"a\\u%04xb\" #".formatted((int) hidden.charAt(0)));
        String code = "(U+%04X)".formatted((int) hidden.charAt(0));

        Cli.Result result = Cli.in(here).run("check");

        assertThat(result.code()).isEqualTo(2);
        assertSafe(result);
        assertThat(result.err())
                .containsPattern("profiles/pantry.csv:\\d+:\\d+: error: a character that cannot be seen")
                .containsPattern("profiles/lifter-gaining.yaml:\\d+:\\d+: error: a character that cannot be seen")
                .containsPattern("baked_oats.yaml:2:\\d+: error: this stands for a character that cannot be seen");
        assertThat(result.err().split(Pattern.quote(code), -1)).hasSize(4);
    }
}
