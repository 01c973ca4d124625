package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same answers, byte for byte, whatever the language, digits and calendar of the system: a Turkish i without its point, Arabic and
 * Thai digits, a year 2569. The program's own choice of one language, in {@code Main.main}, is left out, so that nothing rests on it alone.
 */
class LanguagesTest {
    @TempDir
    static Path here;

    private static String expected = "";

    @BeforeAll
    static void inEnglish() throws IOException {
        Folders.starter(here);
        String profile = "profiles/parent-holding.yaml";
        Folders.replace(here.resolve(profile), "name: ", "name: IiİıŞ ");
        Folders.starter(here.resolve("broken"));
        Folders.replace(here.resolve("broken/foods/dishes/lentil_ragu.yaml"), "kind: main", "kind: LUNCH");
        Folders.replace(here.resolve("broken/" + profile), "containers_a_day", "containers_a_dya");
        expected = answers("-Duser.language=en", "-Duser.country=US");
        assertThat(expected)
                .contains("nearest", "== 0", "== 2", "Content-Security-Policy", "BEGIN:VCALENDAR", "C0000001");
    }

    private static String answers(String... language) throws IOException {
        Cli.Result result =
                Program.in(here).with(language).main(ManyCommands.class).run();
        assertThat(result.err()).isEmpty();
        return result.out();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=tr -Duser.country=TR",
                "-Duser.language=ar -Duser.country=EG -Duser.extensions=nu-arab",
                "-Duser.language=th -Duser.country=TH -Duser.extensions=ca-buddhist-nu-thai",
                "-Duser.language=de -Duser.country=DE"
            })
    void make_no_difference(String language) throws IOException {
        assertThat(answers(language.split(" ", -1))).isEqualTo(expected);
    }

    /** So that the test above cannot pass because the options do nothing. */
    @Test
    void are_really_set() throws IOException {
        Cli.Result arabic = Program.in(here)
                .with("-Duser.language=ar", "-Duser.country=EG", "-Duser.extensions=nu-arab")
                .main(Digits.class)
                .run();

        assertThat(arabic.out()).isEqualTo("\u0661\u0662\u0663");
        assertThat(Files.exists(here.resolve("foods"))).isTrue();
    }

    /** Prints a number as the system's language has it. */
    static final class Digits {
        private Digits() {}

        @SuppressWarnings("DefaultLocale")
        public static void main(String[] args) throws IOException {
            System.out.write("%d".formatted(123).getBytes(java.nio.charset.StandardCharsets.UTF_8));
            System.out.flush();
        }
    }
}
