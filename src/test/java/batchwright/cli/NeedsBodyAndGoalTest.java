package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What needs says of body fat that was not measured, and of a weight by a date. Man, 88 kg, 70 in; tape 15 and 34 in: 17.5 %. */
class NeedsBodyAndGoalTest {
    private static final String BODY = """
            eater: me
            name: Me
            sex: male
            age: 35
            weight: 88 kg
            height: 5 ft 10 in
            activity: active
            containers_a_day: 2
            health:
              eating_disorder: no
            """;
    private static final String TAPE = "tape:\n  neck: 15 in\n  waist: 34 in\n";

    @TempDir
    Path here;

    @BeforeEach
    void files() {
        Folders.starter(here);
    }

    private Cli.Result needs(String lines, String... more) throws IOException {
        Files.writeString(here.resolve("profiles/me.yaml"), BODY + lines);
        String[] args = new String[2 + more.length];
        args[0] = "needs";
        args[1] = "me";
        System.arraycopy(more, 0, args, 2, more.length);
        return Cli.in(here).run(args);
    }

    private JsonNode json(String lines) throws IOException {
        return Shape.parse(needs(lines, "--json").out());
    }

    @Test
    void says_how_body_fat_came_about() throws IOException {
        assertThat(needs("goal: hold\nbody_fat: estimate\n" + TAPE).flat())
                .contains(
                        "the profile asks for an estimate: 17.5 % +- 3.5 points by tape, Hodgdon-Friedl 1999. That is +- 67 kcal"
                                + " a day of the resting energy in use.")
                .contains("Second opinion, not used: 25.3 % +- 4.1 points by Deurenberg 1991");
        assertThat(needs("goal: hold\nbody_fat: estimate\n").flat())
                .contains("25.3 % +- 4.1 points by Deurenberg 1991", "does not rest on it: +- 0 kcal");
        assertThat(needs("goal: hold\nbody_fat: 16 %\n" + TAPE).flat())
                .contains(
                        "16.0 %, as the profile says (method not said), right to about 4.5 points (SD): +- 86 kcal a day of the"
                                + " resting energy in use.")
                .contains("Second opinion, not used: 17.5 %");
        assertThat(needs("goal: hold\n" + TAPE).flat())
                .contains("Not said, so nothing rests on it", "Second opinion, not used: 17.5 %");
    }

    @Test
    void says_it_to_scripts() throws IOException {
        JsonNode tape = json("goal: hold\nbody_fat: estimate\n" + TAPE).get("body_fat");
        assertThat(tape.get("percent").decimalValue()).isEqualByComparingTo("17.51");
        assertThat(tape.get("method").textValue()).isEqualTo("tape, Hodgdon-Friedl 1999");
        assertThat(tape.get("error_points").decimalValue()).isEqualByComparingTo("3.52");
        assertThat(tape.get("resting_error_kcal").decimalValue()).isEqualByComparingTo("66.9");
        assertThat(tape.at("/second_opinions/0/method").textValue()).isEqualTo("Deurenberg 1991");

        JsonNode measured = json("goal: hold\nbody_fat: 16 %\n").get("body_fat");
        assertThat(measured.get("method").textValue()).isEqualTo("measured");
        assertThat(measured.get("error_points").decimalValue()).isEqualByComparingTo("4.5");
        assertThat(measured.get("measured_by").textValue()).isEqualTo("not_said");

        JsonNode nothing = json("goal: hold\n").get("body_fat");
        assertThat(nothing.get("percent").isNull()).isTrue();
        assertThat(nothing.get("second_opinions")).isEmpty();
    }

    /** Woman, 64 kg, 165 cm, 45 years: 1.20 x 23.508 + 0.23 x 45 - 5.4 = 33.16 %. */
    @Test
    void a_plan_says_that_body_fat_is_an_estimate() throws IOException {
        Folders.keepDishes(here, "lentil_ragu"); // so that it is quickly answered
        Files.delete(here.resolve("profiles/desk-cutting.yaml")); // it avoids other dishes
        Path profile = here.resolve("profiles/parent-holding.yaml");
        Files.writeString(profile, Files.readString(profile) + "\nbody_fat: estimate\n");
        Cli.Result plan = Cli.in(here).run("plan", "parent-holding", "--days=2", "--dishes=1");
        assertThat(plan.code()).as(plan.both()).isZero();
        assertThat(plan.flat()).contains("Body fat was not measured. The profile asks for an estimate: 33.2 %");
    }

    /** From 2026-11-25 to 2027-03-01 there are 96 days, 13.7 weeks: 6 kg are 0.4375 kg a week, 481 kcal a day at 7700; and 17.7 weeks, 373. */
    @Test
    void a_weight_by_a_date_counts_from_the_cooking_day() throws IOException {
        String goal = "goal: reach 82 kg by 2027-03-01\n";
        assertThat(needs(goal).flat())
                .contains("reach 82 kg by 2027-03-01, in 13.7 weeks: -", "7700 kcal per kg: -481 kcal)")
                .contains("Once there, about", "needs --weeks 14");
        assertThat(needs(goal, "--date", "2026-10-28").flat())
                .contains("in 17.7 weeks: -", "7700 kcal per kg: -373 kcal)");
        Cli.Result late = needs(goal, "--date", "2027-03-01");
        assertThat(late.code()).isEqualTo(2);
        assertThat(late.err()).contains("2027-03-01 is not after the cooking day, 2027-03-01");

        JsonNode json = json(goal).get("goal");
        assertThat(json.get("weight_kg").decimalValue()).isEqualByComparingTo("82");
        assertThat(json.get("by").textValue()).isEqualTo("2027-03-01");
        assertThat(json.get("weeks").decimalValue()).isEqualByComparingTo("13.71");
        assertThat(json.get("kg_per_week_on_average").decimalValue()).isEqualByComparingTo("-0.44");
        assertThat(json.get("kg_per_week").decimalValue())
                .isLessThan(json.get("kg_per_week_on_average").decimalValue());
        assertThat(json.at("/kcal_per_kg/by_composition").isNull()).isTrue();
    }

    @Test
    void shows_the_band_beside_the_goal() throws IOException {
        String gain = "goal: gain 0.4 % a week\n";
        assertThat(needs(gain).flat())
                .contains("Advised for novice and intermediate lifters: 0.25-0.5 % of weight a week, 0.22-0.44 kg")
                .contains("(the profile does not say the experience)");
        JsonNode advanced = json(gain + "experience: advanced\n");
        assertThat(advanced.at("/goal/advised/max_percent_per_week").decimalValue())
                .isEqualByComparingTo("0.25");
        assertThat(advanced.at("/goal/advised/inside").booleanValue()).isFalse();
        assertThat(advanced.get("cautions"))
                .anyMatch(c -> c.get("code").textValue().equals("gain_fast"));
        assertThat(json("goal: hold\n").at("/goal/advised").isNull()).isTrue();
    }

    @Test
    void a_goal_that_is_refused_has_no_figures() throws IOException {
        JsonNode json = json("goal: reach 50 kg by 2027-03-01\n");
        assertThat(json.get("goal").has("weight_kg")).isFalse();
        assertThat(json.at("/goal/kcal_per_day").isNull()).isTrue();
        assertThat(json.get("targets").isNull()).isTrue();
        assertThat(json.get("cautions").findValuesAsText("code")).contains("goal_below_bmi_18_5");
    }
}
