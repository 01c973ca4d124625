package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** needs without a profile: answers as options, and questions to somebody at the keyboard. */
class NeedsEnteredTest {
    /** Mifflin-St Jeor: 740 + 1131.25 - 135 + 5 = 1741.25 kcal; times 1.76 are 3064.6. */
    private static final String[] ADAM = {
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
        "hold"
    };

    private static final String ANSWER = "3065 kcal a day";
    /** metric; the needed answers; experience and twelve questions of health left out; content; not saved. */
    private static final String[] TYPED = typed(
            Stream.of("", "male", "27", "74", "181", "", "active", "hold", "", ""), nothing(12), Stream.of("", ""));

    @TempDir
    Path here;

    private static Stream<String> nothing(int times) {
        return Stream.generate(() -> "").limit(times);
    }

    private static String[] typed(Stream<String> first, Stream<String> then) {
        return Stream.concat(first, then).toArray(String[]::new);
    }

    private static String[] typed(Stream<String> first, Stream<String> then, Stream<String> last) {
        return Stream.concat(Stream.concat(first, then), last).toArray(String[]::new);
    }

    private Cli.Result with(String... more) {
        return Cli.in(here)
                .run(Stream.concat(Arrays.stream(ADAM), Arrays.stream(more)).toArray(String[]::new));
    }

    @Test
    void every_answer_may_be_an_option() {
        Cli.Result result = with("--health", "kidney_disease=no", "--experience", "novice");

        assertThat(result.code()).isZero();
        assertThat(result.out()).startsWith("You: " + ANSWER);
    }

    @Test
    void a_diary_and_a_tape_are_options_too() {
        Cli.Result result = Cli.in(here)
                .run(
                        "needs",
                        "--sex",
                        "female",
                        "--age",
                        "31",
                        "--weight",
                        "154 lb",
                        "--height",
                        "5 ft 6 in",
                        "--body-fat",
                        "estimate",
                        "--tape",
                        "neck=13 in",
                        "--tape",
                        "waist=30 in",
                        "--tape",
                        "hips=40 in",
                        "--diary",
                        "sleeping=8 h",
                        "--diary",
                        "sitting=10 h",
                        "--diary",
                        "standing_work=6 h",
                        "--goal",
                        "hold");

        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.flat()).contains("by tape", "diary");
    }

    @Test
    void a_wrong_option_is_explained_as_in_a_profile() {
        Cli.Result result = with("--weight", "7 kg");

        assertThat(result.code()).isEqualTo(2);
        assertThat(with("--health", "kidney_diseas=no").err()).contains("nearest: \"kidney_disease\"");
    }

    @Test
    void without_input_all_that_is_missing_is_named_at_once() {
        for (Cli.Result result : new Cli.Result[] {
            Cli.in(here).run("needs", "--sex", "male", "--age", "27"),
            Cli.in(here).typing("74 kg").run("needs", "--sex", "male", "--age", "27", "--no-input")
        }) {
            assertThat(result.code()).isEqualTo(2);
            assertThat(result.out()).isEmpty();
            assertThat(result.err()).contains("answers are missing: --weight, --height, --activity, --goal");
        }
    }

    @Test
    void a_named_eater_and_answers_do_not_go_together() {
        Cli.Result result = Cli.in(here).run("needs", "lifter-gaining", "--age", "30");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("an eater is named, and answers are given too");
    }

    @Test
    void questions_lead_to_the_same_answer_as_options() {
        Cli.Result result = Cli.in(Folders.starter(here)).typing(TYPED).run("needs");

        assertThat(result.code()).isZero();
        assertThat(result.out()).isEqualTo(with().out());
        assertThat(result.err()).contains("What do you weigh in the morning? Such as 74 kg.", "weight: 74 kg");
        assertThat(result.err().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void answers_may_be_json_while_questions_are_asked() {
        Cli.Result result = Cli.in(Folders.starter(here)).typing(TYPED).run("needs", "--json");

        assertThat(Shape.parse(result.out()).get("schema").textValue()).isEqualTo("batchwright.needs/1");
    }

    @Test
    void only_what_no_option_says_is_asked() {
        Cli.Result result = Cli.in(here)
                .typing(typed(Stream.of("", "", "hold", "", ""), nothing(12), Stream.of("")))
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
                        "active");

        assertThat(result.code()).isZero();
        assertThat(result.err()).doesNotContain("How tall are you?");
        assertThat(result.out()).startsWith("You: " + ANSWER);
    }

    @Test
    void a_wrong_answer_is_explained_and_asked_again() {
        Cli.Result result = Cli.in(here)
                .typing("imperial", "metric", "man", "male", "", "27", "7", "74", "quit")
                .run("needs");

        assertThat(result.code()).isEqualTo(130);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .contains(
                        "Enter metric or us",
                        "\"man\" is neither female nor male",
                        "Without it nothing can be worked out.",
                        "weight 7 kg is less than 25 kg",
                        "Nothing was saved.");
    }

    @Test
    void back_asks_the_question_before_once_more() {
        Cli.Result result = Cli.in(Folders.starter(here))
                .typing(typed(
                        Stream.of("", "back", "female", "back", "male", "72", "back", "27"),
                        Arrays.stream(TYPED).skip(3)))
                .run("needs");

        assertThat(result.out()).startsWith("You: " + ANSWER);
    }

    @Test
    void pounds_feet_and_inches_need_no_units_when_they_are_chosen() {
        Cli.Result result = Cli.in(here)
                .typing(typed(Stream.of("us", "male", "27", "163", "5 11", "", "active", "hold", "", ""), nothing(14)))
                .run("needs");

        assertThat(result.err()).contains("weight: 163 lb", "height: 5 ft 11 in");
        assertThat(result.code()).isZero();
    }

    @Test
    void a_diary_is_asked_for_until_it_is_full() {
        Cli.Result result = Cli.in(here)
                .typing(typed(
                        Stream.of(
                                "",
                                "male",
                                "27",
                                "74",
                                "181",
                                "",
                                "diary",
                                "",
                                "sleepng 8 h",
                                "sleeping 8 h",
                                "walking"),
                        Stream.of("", "sitting 20 h", "back", "sitting 10 h", "standing_work 6 h", "", "hold", "", ""),
                        nothing(14)))
                .run("needs");

        assertThat(result.err())
                .contains(
                        "Nothing is in the diary yet.",
                        "there is no activity called \"sleepng\"",
                        "Enter an activity and a time",
                        "the diary holds 8 h: 16 h of a day are missing",
                        "diary: sleeping 8 h, sitting 10 h, standing_work 6 h");
        assertThat(result.code()).isZero();
    }

    @Test
    void an_answer_may_be_changed_at_the_end() {
        Cli.Result result = Cli.in(Folders.starter(here))
                .typing(typed(
                        Stream.of("", "male", "72", "74", "181", "", "active", "hold", "", ""),
                        nothing(12),
                        Stream.of("99", "2", "27", "", "")))
                .run("needs");

        assertThat(result.err()).contains("Enter a number from 1 to ");
        assertThat(result.out()).startsWith("You: " + ANSWER);
    }

    @Test
    void answers_are_saved_as_a_profile_that_is_read_back_to_the_same() throws IOException {
        Folders.starter(here);
        String[] saving = TYPED.clone();
        saving[saving.length - 1] = "desk-cutting";
        Cli.Result result = Cli.in(here)
                .typing(typed(Arrays.stream(saving), Stream.of("Adam!", "adam")))
                .run("needs");

        assertThat(result.err()).contains("is there already", "cannot be a short name", "Written: ");
        assertThat(Files.readString(here.resolve("profiles/adam.yaml"))).contains("weight: 74 kg", "goal: hold");
        Cli.Result again = Cli.in(here).run("needs", "adam");
        assertThat(again.err()).isEmpty();
        assertThat(again.out().replace("adam: ", "You: ")).isEqualTo(result.out());
        assertThat(Cli.in(here).run("check").code()).isZero();
    }

    @Test
    void save_writes_and_never_over_a_file_that_is_there() throws IOException {
        Folders.starter(here);

        assertThat(with("--save", "adam").code()).isZero();
        String before = Files.readString(here.resolve("profiles/adam.yaml"));
        Cli.Result second = with("--save", "adam", "--age", "28");

        assertThat(second.code()).isEqualTo(2);
        assertThat(Files.readString(here.resolve("profiles/adam.yaml"))).isEqualTo(before);
    }

    @Test
    void without_a_folder_of_ones_own_nothing_is_saved() {
        Cli.Result result = with("--save", "adam");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("init my-kitchen");
        assertThat(here).isEmptyDirectory();
    }

    @Test
    void the_end_of_all_input_ends_it() {
        Cli.Result result = Cli.in(here).typing("", "male").run("needs");

        assertThat(result.code()).isEqualTo(130);
        assertThat(result.out()).isEmpty();
    }
}
