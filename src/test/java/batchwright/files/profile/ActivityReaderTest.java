package batchwright.files.profile;

import static batchwright.files.Lines.written;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.page.YamlPage;
import batchwright.files.value.Problems;
import batchwright.person.ActivityFacts;
import batchwright.person.CommonMultiplier;
import batchwright.person.Diary;
import batchwright.person.FaoLevel;
import batchwright.person.PalNumber;
import batchwright.person.PhysicalActivity;
import batchwright.person.UsualDay;
import batchwright.text.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every way to say how active an eater is. */
class ActivityReaderTest {
    private final Problems problems = new Problems();

    private Optional<? extends PhysicalActivity> read(String lines) {
        Yaml.Group page =
                YamlPage.read(SourceFile.of("a.yaml", lines + "\n"), problems).orElseThrow();
        return new ActivityReader(problems, 30)
                .read(Fields.ofPage(
                        page, List.of("activity", "diary", "day", "steps", "walking", "training"), problems));
    }

    private PhysicalActivity right(String lines) {
        PhysicalActivity activity = read(lines).orElseThrow();
        assertThat(problems.list()).isEmpty();
        return activity;
    }

    @ParameterizedTest
    @EnumSource(FaoLevel.class)
    void a_level(FaoLevel level) {
        assertThat(right("activity: " + level.label())).isEqualTo(level);
    }

    @ParameterizedTest
    @EnumSource(CommonMultiplier.class)
    void a_multiplier(CommonMultiplier multiplier) {
        assertThat(right("activity: multiplier " + multiplier.word())).isEqualTo(multiplier);
    }

    @ParameterizedTest
    @CsvSource({"1.0, 1", "1.65, 1.65", "1.60, 1.6", "2.5, 2.5"})
    void a_number(String written, String label) {
        PhysicalActivity activity = right("activity: " + written);
        assertThat(activity).isEqualTo(new PalNumber(Double.parseDouble(written)));
        assertThat(activity.label()).isEqualTo(label);
    }

    /** 1.40 + 0.02 x 3 + (3 h x 2.5 + 0.75 h x 6) / 7 / 24 / 0.9 = 1.539. */
    @Test
    void facts() {
        PhysicalActivity facts =
                right("activity: facts\nday: sitting\nsteps: 7000\ntraining: 3 h weights, 45 min jogging");
        assertThat(facts.label()).isEqualTo("facts");
        assertThat(facts.pal()).isEqualTo(1.54);
        assertThat(right("activity: facts\nday: sitting\nwalking: 30 min\ntraining: none"))
                .isEqualTo(new ActivityFacts(UsualDay.SITTING, 7000, List.of(), 30));
        assertThat(right("activity: facts\nday: heavy").pal()).isEqualTo(1.9);
    }

    @ParameterizedTest
    @CsvSource({"no, 0", "1 time a week, 1", "3 times a week, 3", "4 x a week, 4"})
    void training_with_weights(String written, int times) {
        assertThat(StrengthTrainingGrammar.read(written(written), problems)).contains(times);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "3", "15 times a week", "-1 times a week", "2.5 times a week"})
    void training_with_weights_that_says_nothing(String written) {
        assertThat(StrengthTrainingGrammar.read(written(written), problems)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    /** (8 x 0.95 + 7.5 x 1.5 + 0.5 x 3.5 + 8 x 1.3) / 24 = 31 / 24 = 1.29. */
    @Test
    void a_diary_of_a_day() {
        PhysicalActivity day =
                right("activity: diary\ndiary:\n  sleeping: 8 h\n  office_work: 7 h 30 min\n  walking: 30 min\n"
                        + "  sitting: 8.0 h");
        assertThat(day.label()).isEqualTo("diary of a day");
        assertThat(day.pal()).isEqualTo(1.29);
    }

    @Test
    void a_diary_of_a_week() {
        PhysicalActivity week =
                right("activity: diary\ndiary:\n  sleeping: 56 h\n  office_work: 40 h\n  sitting: 72 h");
        assertThat(week)
                .isInstanceOfSatisfying(
                        Diary.class, diary -> assertThat(diary.isWeek()).isTrue());
    }

    @ParameterizedTest
    @CsvSource({
        "8 h, 480",
        "8h, 480",
        "45 min, 45",
        "7 h 30 min, 450",
        "7h30min, 450",
        "0.25 h, 15",
        "1.5 h 15 min, 105",
        "168 h, 10080"
    })
    void times_there_and_back(String text, int minutes) {
        assertThat(HoursGrammar.read(written(text), problems)).contains(minutes);
        assertThat(HoursGrammar.read(written(HoursGrammar.written(minutes)), problems))
                .contains(minutes);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "8",
                "eight h",
                "8 hours",
                "30 min 7 h",
                "-1 h",
                "1,5 h",
                "0 h",
                "0 min",
                "0.33 h",
                "1.5 min",
                "169 h",
                "h",
                "1e1 h",
                "99999999999 min"
            })
    void times_that_are_refused(String text) {
        assertThat(HoursGrammar.read(written(text), problems)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "activity: diary",
                "activity: diary\ndiary: 8 h",
                "activity: diary\ndiary:\n  sleeping: [8 h]",
                "activity: diary\ndiary: {}",
                "activity: diary\ndiary:\n  sleeping: 24 h",
                "diary:\n  lying: 24 h",
                "activity: active\ndiary:\n  lying: 24 h",
                "activity: multiplier",
                "activity: multiplier 1.2",
                "activity: 2.51",
                "activity: 0.99"
            })
    void what_is_refused_with_one_error(String lines) {
        read(lines);
        assertThat(problems.errors()).as(problems.list().toString()).isEqualTo(1);
    }
}
