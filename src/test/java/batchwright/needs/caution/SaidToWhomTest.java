package batchwright.needs.caution;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.target.TargetLine;
import batchwright.person.Sex;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody is told what concerns others. */
class SaidToWhomTest {
    /** Body fat of 4 and 10 % is under every floor of a loss, 9 and 21 % are lean or under it, by an unknown method. */
    @ParameterizedTest
    @CsvSource({"MALE, 4", "MALE, 9", "FEMALE, 10", "FEMALE, 21"})
    void the_menstrual_cycle_is_named_to_women_only(Sex sex, double fat) {
        Needs needs = TestEater.of(TestEater.body(sex, 75, 180, 30, fat))
                .percentAWeek(-0.4)
                .needs();
        String text = needs.cautions().stream().map(Caution::text).collect(Collectors.joining());
        assertThat(text).contains("hormones");
        assertThat(text.contains("menstrual cycle")).isEqualTo(sex == Sex.FEMALE);
        assertThat(text.contains("periods")).isEqualTo(sex == Sex.FEMALE && fat == 21);
        assertThat(text).doesNotContain("{");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.3, 0.2})
    void advice_for_people_who_lift_is_not_said_to_who_does_not(double percent) {
        TestEater eater =
                TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30)).pal(1.7).percentAWeek(percent);
        assertThat(says(eater.needs())).contains("Advised for", "lifters");
        assertThat(says(eater.lifts(3).needs())).contains("Advised for", "lifters");
        assertThat(says(eater.lifts(0).needs())).doesNotContain("Advised for", "lifters");
    }

    private static String says(Needs needs) {
        return needs.goal().orElseThrow().notes().stream()
                        .map(GoalFinding.Note::says)
                        .collect(Collectors.joining())
                + needs.guides().orElseThrow().lines().stream()
                        .map(TargetLine::name)
                        .collect(Collectors.joining());
    }

    @Test
    void who_does_not_lift_is_told_how_much_protein_helps_without() {
        Needs needs =
                TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30)).lifts(0).needs();
        assertThat(needs.lines().stream().map(TargetLine::says).collect(Collectors.joining()))
                .contains("for people who do not train with weights");
    }
}
