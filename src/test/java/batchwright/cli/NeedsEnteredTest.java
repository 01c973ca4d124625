package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
    /** Sex, age, height, weight, goal, activity, training with weights; health, what to avoid and boxes left out; content; not saved. */
    private static final String[] TYPED = {"male", "27", "181", "74", "hold", "active", "", "", "", "", "", ""};

    @TempDir
    Path here;

    private static String[] typed(Stream<String> first, Stream<String> then) {
        return Stream.concat(first, then).toArray(String[]::new);
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
            assertThat(result.err()).contains("answers are missing: --height, --weight, --goal, --activity");
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
                .typing("hold", "", "", "", "", "", "")
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
                .typing("man", "male", "27", "181", "7", "74", "quit")
                .run("needs");

        assertThat(result.code()).isEqualTo(130);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .contains(
                        "\"man\" is neither female nor male",
                        "weight 7 kg is less than 25 kg",
                        "Nothing was kept: there is no folder of your own.");
    }

    @Test
    void back_asks_the_question_before_once_more() {
        Cli.Result result = Cli.in(Folders.starter(here))
                .typing(typed(
                        Stream.of("back", "female", "back", "male", "72", "back", "27"),
                        Arrays.stream(TYPED).skip(2)))
                .run("needs");

        assertThat(result.out()).startsWith("You: " + ANSWER);
    }

    @Test
    void who_says_the_height_in_feet_needs_no_pounds() {
        Cli.Result result = Cli.in(here)
                .typing("male", "27", "5 11", "163", "hold", "active", "", "", "", "", "", "")
                .run("needs");

        assertThat(result.err())
                .contains("Such as 181 cm, or 5 ft 11 in.", "Such as 163 lb.", "weight: 163 lb", "height: 5 ft 11 in");
        assertThat(result.code()).isZero();
    }

    @Test
    void a_diary_is_asked_for_until_it_is_full() {
        Cli.Result result = Cli.in(here)
                .typing(
                        "male",
                        "27",
                        "181",
                        "74",
                        "hold",
                        "diary",
                        "",
                        "sleepng 8 h",
                        "sleeping 8 h",
                        "walking",
                        "",
                        "sitting 20 h",
                        "back",
                        "sitting 10 h",
                        "standing_work 6 h",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "")
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
                .typing("male", "72", "181", "74", "hold", "active", "", "", "", "", "99", "2", "27", "", "")
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
        assertThat(here.resolve("profiles/draft.txt")).doesNotExist();
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
        assertThat(result.err()).contains("starter files", "init DIR");
        assertThat(here).isEmptyDirectory();
    }

    @Test
    void the_end_of_all_input_ends_it() {
        Cli.Result result = Cli.in(here).typing("", "male").run("needs");

        assertThat(result.code()).isEqualTo(130);
        assertThat(result.out()).isEmpty();
    }

    /** Sex, age, height, weight, goal, day, training, health, what to avoid, boxes. */
    @Test
    void a_usual_healthy_adult_is_asked_ten_questions() {
        Cli.Result result = Cli.in(here)
                .typing(
                        "female",
                        "31",
                        "168",
                        "70",
                        "lose 0.3 % a week",
                        "sitting",
                        "1 h weights",
                        "none",
                        "peanut, Tree nut",
                        "2",
                        "")
                .run("needs");

        assertThat(result.code()).isZero();
        String asked = result.err().substring(0, result.err().indexOf("Your answers:"));
        assertThat(asked.lines()
                        .filter(line -> line.equals("> ") || line.startsWith("> "))
                        .count())
                .as(asked)
                .isEqualTo(10);
        assertThat(result.flat()).doesNotContain("does not say whether");
        assertThat(result.err())
                .contains(
                        "health: nothing of what was asked", "never: peanut, Tree nut", "training a week: 1 h weights");
    }

    @Test
    void single_questions_follow_only_for_what_applies() {
        Cli.Result result = Cli.in(here)
                .typing(
                        "male",
                        "31",
                        "181",
                        "80",
                        "lose 0.3 % a week",
                        "active",
                        "",
                        "9",
                        "3 x",
                        "3",
                        "maybe",
                        "no",
                        "no",
                        "no",
                        "yes",
                        "no",
                        "",
                        "",
                        "",
                        "")
                .run("needs");

        assertThat(result.err())
                .contains("Enter numbers from 1 to 7", "Do you take insulin?", "is no answer to this", "-gliptin?")
                .doesNotContain("Do you take warfarin", "pregnant")
                .contains("health: sugar or weight medicine", "metformin or a gliptin: yes");
        assertThat(result.code()).isZero();
        assertThat(result.flat()).contains("less medicine may be enough");
    }

    @Test
    void what_is_needed_may_be_left_out_at_first_and_is_asked_for_again() {
        Cli.Result result = Cli.in(here)
                .typing("", "27", "", "74", "74 kg", "", "active", "", "", "", "", "", "male", "181", "hold", "", "")
                .run("needs");

        assertThat(result.err()).contains("Such as 74 kg, or 163 lb.", "Without it nothing can be worked out.");
        assertThat(result.out()).startsWith("You: " + ANSWER);
    }

    /** Body fat changes little for most people, and is asked for when it is wanted. */
    @Test
    void an_answer_that_was_not_asked_for_can_be_given_at_the_end() {
        Cli.Result result = Cli.in(here)
                .typing("male", "27", "181", "74", "hold", "active", "", "", "", "", "5", "15", "callipers", "", "")
                .run("needs");

        assertThat(result.err()).contains("5  body fat: not said", "body fat: 15 %");
        assertThat(result.out()).contains("By Cunningham 1991");
    }

    @Test
    void health_avoid_and_boxes_are_options_too() {
        Cli.Result result = with("--health", "none", "--avoid", "peanut", "--containers-a-day", "2");
        assertThat(result.code()).isZero();
        assertThat(result.flat()).doesNotContain("does not say whether");
        assertThat(with("--health", "none", "--avoid", "peenut").err()).contains("nearest: \"peanut\"");
        assertThat(with("--containers-a-day", "9").err()).contains("containers_a_day");
    }

    /** 72 years, BMI 27: whether a doctor agrees is asked before the answer, and the answer counts. */
    @ParameterizedTest
    @CsvSource({"yes, 0", "no, 3", "'', 3"})
    void what_an_answer_would_stop_for_is_asked_before_it(String agrees, int code) {
        Cli.Result result = Cli.in(here)
                .typing("male", "72", "175", "83", "lose 0.3 % a week", "active", "", "none", "", "", "", agrees)
                .run("needs");

        assertThat(result.err()).contains("Has a doctor or dietitian agreed to this goal?");
        assertThat(result.code()).isEqualTo(code);
        assertThat(result.flat().contains("No plan yet")).isEqualTo(agrees.isEmpty());
    }

    @Test
    void after_an_eating_disorder_no_more_is_asked_of_eating() {
        Cli.Result result = Cli.in(here)
                .typing("male", "30", "175", "83", "hold", "active", "", "1", "yes", "", "", "")
                .run("needs");

        assertThat(result.err())
                .contains("Have you ever had an eating disorder")
                .doesNotContain("sick when you feel");
        assertThat(result.code()).isEqualTo(3);
    }

    @Test
    void somebody_under_18_is_told_at_once() {
        Cli.Result result = Cli.in(here).typing("male", "15", "quit").run("needs");

        assertThat(result.err().replaceAll("\\s+", " ")).contains("No figures and no plan under 18 years");
        assertThat(Cli.in(here).typing("male", "18", "quit").run("needs").err()).doesNotContain("under 18");
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "No", "y"})
    void a_yes_or_no_is_not_taken_for_a_name(String answer) {
        Folders.starter(here);
        Cli.Result result = Cli.in(here)
                .typing(typed(Arrays.stream(TYPED).limit(TYPED.length - 1), Stream.of(answer, "")))
                .run("needs");

        assertThat(result.code()).isZero();
        assertThat(result.err()).contains("Enter a name to save it").doesNotContain("Written:");
    }
}
