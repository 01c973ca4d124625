package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that are not a profile yet are kept, whenever the dialogue ends, and can be gone on with. */
class NeedsDraftTest {
    private static final String[] ANSWERS = {
        "female", "31", "168", "70", "lose 0.3 % a week", "active", "", "4", "no", "no", "no", "yes", "no", "egg", "2"
    };

    @TempDir
    Path here;

    private Path draft;

    @BeforeEach
    void folder() {
        draft = Folders.starter(here).resolve("profiles/draft.txt");
    }

    private Cli.Result needs(Stream<String> typed) {
        return Cli.in(here).typing(typed.toArray(String[]::new)).run("needs");
    }

    /** End of input stands for Ctrl-C: what was answered is on the disk already. */
    @ParameterizedTest
    @ValueSource(ints = {1, 4, 7, 8, 10, 14})
    void whoever_goes_on_is_asked_what_is_left_and_gets_the_same_answer(int answered) throws IOException {
        Cli.Result ended = needs(Arrays.stream(ANSWERS).limit(answered));
        assertThat(ended.code()).isEqualTo(130);
        assertThat(ended.err()).contains("Kept in ");
        assertThat(Files.readString(draft)).contains("sex: female");

        Cli.Result gone = needs(Stream.concat(
                Stream.concat(Stream.of(""), Arrays.stream(ANSWERS).skip(answered)), Stream.of("", "")));
        Files.deleteIfExists(draft);
        Cli.Result atOnce = needs(Stream.concat(Arrays.stream(ANSWERS), Stream.of("", "")));

        assertThat(atOnce.code()).isZero();
        assertThat(gone.out()).isEqualTo(atOnce.out()).startsWith("You: ");
        assertThat(gone.err()).contains("There are unfinished answers in");
    }

    @Test
    void a_draft_can_be_thrown_away() {
        needs(Stream.of("female", "31"));
        Cli.Result again = needs(Stream.of("what?", "new", "male"));

        assertThat(again.err()).contains("Female or male");
        assertThat(draft).content().contains("sex: male").doesNotContain("age");
    }

    @Test
    void a_draft_is_no_profile_and_goes_when_one_is_saved() {
        needs(Arrays.stream(ANSWERS).limit(9));
        assertThat(draft).exists();
        assertThat(Cli.in(here).run("check").err()).isEmpty();

        Cli.Result saved = needs(Stream.concat(
                Stream.concat(Stream.of(""), Arrays.stream(ANSWERS).skip(9)), Stream.of("", "ada")));
        assertThat(saved.err()).contains("Written: ");
        assertThat(draft).doesNotExist();
        assertThat(here.resolve("profiles/ada.yaml"))
                .content()
                .contains("health:\n", "  metformin_or_gliptin: yes", "avoid: [egg]", "containers_a_day: 2");
    }

    @Test
    void back_goes_into_the_draft() {
        needs(Stream.of("female", "31", "180"));
        Cli.Result result = needs(Stream.of("", "back", "168", "70", "hold", "active", "", "none", "", "", "", ""));

        assertThat(result.code()).isZero();
        assertThat(result.err()).contains("height: 168 cm");
    }

    @Test
    void options_go_before_a_draft() {
        needs(Stream.of("female", "31"));
        Cli.Result result = Cli.in(here)
                .typing("", "168", "70", "hold", "active", "", "none", "", "", "", "")
                .run("needs", "--age", "40");

        assertThat(result.code()).isZero();
        assertThat(result.err()).contains("age: 40").doesNotContain("How old are you");
    }

    @Test
    void without_questions_a_draft_is_left_alone() {
        needs(Stream.of("female", "31"));
        Cli.in(here)
                .run(
                        "needs",
                        "--sex",
                        "male",
                        "--age",
                        "27",
                        "--weight",
                        "74 kg",
                        "--height",
                        "181 cm",
                        "--activity",
                        "active",
                        "--goal",
                        "hold");
        assertThat(draft).exists();
    }

    @Test
    void nothing_answered_leaves_no_draft() {
        Cli.Result result = needs(Stream.of("quit"));
        assertThat(result.err()).doesNotContain("Kept in");
        assertThat(draft).doesNotExist();
    }
}
