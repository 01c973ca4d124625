package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Command lines that are not right: exit code 2, what is wrong and what to do, no insides, no file changed. */
class BadCommandLinesTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() throws IOException {
        Folders.starter(here);
        Files.createDirectories(here.resolve("empty"));
        Files.writeString(here.resolve("notes.txt"), "nothing to see\n");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        paln lifter-gaining                       | there is no command "paln"               | Nearest: plan.
        budget                                    | there is no command "budget"             | Commands: needs,
        --zzzzzz                                  | there is no option "--zzzzzz"            | "--help" shows the commands.
        --budgte 60 plan lifter-gaining           | there is no option "--budgte"            | Nearest: --budget.
        --budget 60 plan lifter-gaining           | --budget stands before the command       | plan ... --budget
        --json                                    | no command is named                      | needs, plan, snack
        plan                                      | no eater is named                        | plan lifter-gaining
        plan lifter-gaining --budgte 60           | there is no option "--budgte"            | Nearest: --budget.
        plan lifter-gaining --budget              | --budget has no value                    | --budget M
        plan lifter-gaining --budget abc          | --budget cannot be "abc"                 | 75 or 75.50
        plan lifter-gaining --budget 75,50        | --budget cannot be "75,50"               | decimals with a point
        plan lifter-gaining --budget 75.505       | the budget cannot be "75.505"            | at most 2 decimals
        plan lifter-gaining --budget -3           | --budget cannot be "-3"                  | 75 or 75.50
        plan lifter-gaining --budget 1e3          | --budget cannot be "1e3"                 | 75 or 75.50
        plan lifter-gaining --budget 60 --budget 70 | --budget is given twice                | Give it once.
        plan lifter-gaining --days 99             | --days cannot be "99"                    | from 1 to 28
        plan lifter-gaining --days 0              | --days cannot be "0"                     | from 1 to 28
        plan lifter-gaining --days 2.5            | --days cannot be "2.5"                   | a whole number of days
        plan lifter-gaining --days five           | --days cannot be "five"                  | from 1 to 28
        plan lifter-gaining --days 99999999999    | --days cannot be "99999999999"           | from 1 to 28
        plan lifter-gaining --dishes 11           | --dishes cannot be "11"                  | from 1 to 10
        plan lifter-gaining --reserve 51          | --reserve cannot be "51"                 | from 0 to 50
        plan lifter-gaining --reserve some        | --reserve cannot be "some"               | per cent
        plan lifter-gaining --cooks 2 --proof p   | --proof does not go with --cooks         | Leave out --cooks
        check --proof nowhere.proof               | there is no file nowhere.proof           | holds a proof
        check --proof notes.txt                   | notes.txt is no proof                    | Make the proof again
        plan lifter-gaining --seconds 0           | --seconds cannot be "0"                  | from 1 to 3600
        plan lifter-gaining --date tomorrow       | --date cannot be "tomorrow"              | such as 2026-11-25
        check --date 11/25/2026                   | --date cannot be "11/25/2026"            | year-month-day
        plan lifter-gaining --date 2026-02-30     | --date cannot be "2026-02-30"            | a day of the calendar
        plan lifter-gaining --date                | --date has no value                      | --date YYYY-MM-DD
        plan lifter-gainin                        | there is no eater called "lifter-gainin" | Nearest: lifter-gaining.
        plan lifter-gaining lifter-gaining        | the eater lifter-gaining is named twice  | each eater once
        plan lifter-gaining --cook lentil_ragu, turkey_chili | "turkey_chili" is a dish and no eater | without blanks: DISH,turkey_chili.
        plan lifter-gaining --cook lentil_ragu ,turkey_chili | "turkey_chili" is a dish and no eater | DISH,turkey_chili.
        plan profiles                             | there is no eater called "profiles"      | Known: desk-cutting
        plan profiles/                            | profiles/ is a folder                    | profiles/desk-cutting.yaml
        plan profiles/lifter.yaml                 | there is no file profiles/lifter.yaml    | Nearest: lifter-gaining.
        plan nowhere/lifter-gaining.yaml          | there is no file nowhere/lifter          | Nearest: lifter-gaining.
        needs                                     | no eater is named                        | needs lifter-gaining
        needs lifter-gaining desk-cutting         | one eater at a time                      | Name one profile
        needs lifter-gaining --weeks 0            | --weeks cannot be "0"                    | from 1 to 104
        needs lifter-gaining --weeks 105          | --weeks cannot be "105"                  | from 1 to 104
        needs lifter-gaining --weeks 1.5          | --weeks cannot be "1.5"                  | a whole number of weeks
        needs lifter-gaining --weeks              | --weeks has no value                     | --weeks N
        needs lifter-gaining --week 12            | there is no option "--week"              | Nearest: --weeks.
        needs notes.txt                           | there is no eater called "notes.txt"     | Known: desk-cutting
        needs ../lifter-gaining.yaml              | there is no file ../lifter-gaining.yaml  | Nearest: lifter-gaining.
        needs lifter-gaining --data nowhere       | there is no folder                       | foods/ and profiles/
        needs lifter-gaining --data notes.txt     | is a file                                | foods/ and profiles/
        needs lifter-gaining --data empty         | there is no foods/ in                    | init DIR
        snack                                     | no calorie gap is given                  | snack 430
        snack lots                                | KCAL cannot be "lots"                    | from 0 to 5000
        snack -5                                  | KCAL cannot be "-5"                      | from 0 to 5000
        snack 430 20                              | more than one calorie gap                | snack 430
        snack 430.55                              | KCAL cannot be "430.55"                  | at most one decimal
        snack 430 --most 400                      | --most 400 is less than                  | at least 430
        snack 430 --by weight                     | --by cannot be "weight"                  | energy, pieces, cost, grams
        snack 430 --by enrgy                      | --by cannot be "enrgy"                   | Nearest: energy.
        snack 430 --kinds 0                       | --kinds cannot be "0"                    | from 1 to 4
        snack 430 --protein much                  | --protein cannot be "much"               | from 0 to 300
        dishes lentil_raguu                       | there is no dish called "lentil_raguu"   | Nearest: lentil_ragu.
        dishes lentil_ragu egg_muffins            | more than one dish is named              | Name one dish
        dishes --kcal 700                         | no dish is named                         | dishes lentil_ragu --kcal 700
        dishes lentil_raguu --kcal 700            | there is no dish called "lentil_raguu"   | Nearest: lentil_ragu.
        dishes lentil_ragu egg_muffins --kcal 700 | more than one dish is named              | Name one dish
        dishes lentil_ragu --containers 5         | nothing says how much a container        | --kcal, --protein or both
        dishes lentil_ragu --budget 12            | nothing says how much a container        | --kcal, --protein or both
        dishes lentil_ragu --fat 20               | nothing says how much a container        | --kcal, --protein or both
        dishes lentil_ragu --kcal                 | --kcal has no value                      | --kcal K
        dishes lentil_ragu --kcal lots            | --kcal cannot be "lots"                  | 600-700, from 0 to 5000
        dishes lentil_ragu --kcal 7,5             | --kcal cannot be "7,5"                   | decimals with a point
        dishes lentil_ragu --kcal 5001            | --kcal cannot be "5001"                  | from 0 to 5000
        dishes lentil_ragu --kcal -5              | --kcal cannot be "-5"                    | from 0 to 5000
        dishes lentil_ragu --kcal 600-            | --kcal cannot be "600-"                  | from 0 to 5000
        dishes lentil_ragu --kcal 600-lots        | --kcal cannot be "lots"                  | a number of kcal
        dishes lentil_ragu --kcal 700-600         | --kcal 700-600 begins above its end      | --kcal 600-700
        dishes lentil_ragu --kcal 600-700 --band 5 | --kcal 600-700 is a band already        | Leave --band out
        dishes lentil_ragu --protein 30 --band 5  | --band needs --kcal                     | --kcal 700 --band 5
        dishes lentil_ragu --kcal 700 --band 51   | --band cannot be "51"                    | from 0 to 50
        dishes lentil_ragu --kcal 700 --band 3%   | --band cannot be "3%"                    | per cent
        dishes lentil_ragu --protein much         | --protein cannot be "much"               | from 0 to 300
        dishes lentil_ragu --protein 30.55        | --protein cannot be "30.55"              | at most one decimal
        dishes lentil_ragu --protein 30 --fat 501 | --fat cannot be "501"                    | from 0 to 500
        dishes lentil_ragu --kcal 700 --containers 0  | --containers cannot be "0"           | from 1 to 60
        dishes lentil_ragu --kcal 700 --containers 61 | --containers cannot be "61"          | from 1 to 60
        dishes lentil_ragu --kcal 700 --budget 12,5   | --budget cannot be "12,5"            | decimals with a point
        dishes lentil_ragu --kcal 700 --without ragu  | ragu is in every container           | pasta, parmesan
        dishes lentil_ragu --kcal 700 --without psta  | has no part called "psta"            | Nearest: pasta.
        dishes lentil_ragu --kcal 700 --with bacon    | has no part called "bacon"           | pasta, parmesan
        dishes lentil_ragu --kcal 700 --with pasta --without pasta | pasta is both to be in | Name it once.
        dishes lentil_ragu --kcl 700              | there is no option "--kcl"               | Nearest: --kcal.
        foods --json=maybe                        | --json cannot have this value            | Write it as --json.
        needs lifter-gaining --activities         | --activities cannot be used with an eater | needs --activities
        needs --activities --weeks 4              | --activities cannot be used with --weeks  | needs --activities
        needs --activites                         | there is no option "--activites"         | Nearest: --activities.
        check lifter-gaining                      | more than check can use                  | check --help
        init                                      | no folder is named                       | init my-kitchen
        init notes.txt                            | notes.txt is a file                      | Nothing was written
        init one two                              | more than one folder is named            | init my-kitchen
        """)
    void says_what_is_wrong_and_what_to_do(String line, String wrong, String cure) throws IOException {
        Map<String, String> before = Folders.content(here);
        List<String> args = new ArrayList<>(List.of(line.strip().split("\\s+")));

        Cli.Result text = Cli.in(here).run(args.toArray(new String[0]));

        assertThat(text.code()).as(text.both()).isEqualTo(2);
        assertThat(text.err())
                .startsWith("error: ")
                .contains(wrong)
                .contains(cure)
                .doesNotContain("Invalid");
        if (!args.contains("--json")) {
            assertThat(text.out()).isEmpty();
        }
        assertNoInsides(text);
        args.add("--json");
        if (!line.contains("--json") && !line.matches(".* --[a-z]+")) {
            Cli.Result json = Cli.in(here).run(args.toArray(new String[0]));
            assertThat(json.code()).isEqualTo(2);
            assertThat(json.err()).isEqualTo(text.err());
            JsonNode errors = Shape.parse(json.out());
            Shape.check(
                    errors,
                    "{\"schema\": \"=batchwright.error/1\", \"errors\": [{\"wrong\": \"text\", \"cure\": \"text\"}]}");
            assertThat(errors.at("/errors/0/wrong").textValue()).contains(wrong);
        }
        assertThat(Folders.content(here)).isEqualTo(before);
    }

    static void assertNoInsides(Cli.Result result) {
        assertThat(result.both()).doesNotContain("Exception", "at batchwright", "batchwright.cli", "picocli", "java.");
    }

    @Test
    void debug_shows_where_it_happened() {
        Cli.Result result = Cli.in(here).run("plan", "lifter-gainin", "--debug");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("at batchwright.").contains("error: there is no eater called");
    }

    @Test
    void a_word_that_begins_with_an_at_sign_is_a_word() {
        assertThat(Cli.in(here).run("foods", "@notes.txt").out()).startsWith("No food has all of \"@notes.txt\".");
    }
}
