package batchwright.files.profile;

import static batchwright.files.Lines.written;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.files.FilesInMemory;
import batchwright.files.dishes.PortionGrammar;
import batchwright.files.page.Fields;
import batchwright.files.page.Yaml;
import batchwright.files.page.YamlPage;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Experience;
import batchwright.person.FatMethod;
import batchwright.person.Goal;
import batchwright.quantity.Length;
import batchwright.quantity.Share;
import batchwright.text.SourceFile;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units, rates, portions and numbers as people write them. */
class GrammarTest {
    private final Problems problems = new Problems();

    /** The inch is 2.54 cm and the pound 0.45359237 kg by definition (international yard and pound agreement, 1959). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"181 cm, 181", "181cm, 181", "1.81 m, 181", "5 ft 11 in, 180.34", "5 ft, 152.4", "5ft 11.5in, 181.61"})
    void heights(String text, double cm) {
        Optional<Length> height = new BodyReader(problems).height(written(text));
        assertThat(height).hasValueSatisfying(h -> assertThat(h.cm()).isCloseTo(cm, within(1e-9)));
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {"181", "5'11\"", "1,81 m", "18.1 m", "181 mm", "5 ft 12 in", "tall", "NaN cm", "-5 cm", "1e2 cm"
            })
    void heights_that_are_refused(String text) {
        assertThat(new BodyReader(problems).height(written(text))).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"74 kg, 74", "163 lb, 73.93555631", "74.5kg, 74.5", "'74\u00a0kg', 74"})
    void weights(String text, double kg) {
        assertThat(body("weight: " + text).map(b -> b.weight().kg()))
                .hasValueSatisfying(found -> assertThat(found).isCloseTo(kg, within(1e-8)));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {"24.9 kg", "301 kg", "20 lb", "700 lb", "74", "74 g", "74,5 kg", "kg", "seventy kg", "∞ kg"})
    void weights_that_are_refused(String text) {
        assertThat(body("weight: " + text)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    private Optional<Body> body(String weight) {
        var file = SourceFile.of("a.yaml", "sex: male\nage: 27\nheight: 181 cm\n" + weight + "\n");
        Yaml.Group page = YamlPage.read(file, problems).orElseThrow();
        return new BodyReader(problems)
                .read(Fields.ofPage(
                        page,
                        List.of("sex", "age", "height", "weight", "body_fat", "body_fat_method", "tape"),
                        problems));
    }

    @Test
    void goals() {
        assertThat(goal("hold")).contains(Goal.HOLD);
        assertThat(goal("gain 0.25 % a week")).contains(new Goal.PercentAWeek(0.25));
        assertThat(goal("lose 0.6% a week")).contains(new Goal.PercentAWeek(-0.6));
        assertThat(goal("lose 0.5 kg a week")).contains(new Goal.KgAWeek(-0.5));
        assertThat(goal("lose 1 lb a week")).contains(new Goal.KgAWeek(-0.45359237));
        assertThat(goal("gain 0.5lb a week")).contains(new Goal.KgAWeek(0.5 * 0.45359237));
        assertThat(goal("gain  300  kcal a  day")).contains(new Goal.EnergyADay(300));
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "gain",
                "lose weight",
                "Hold",
                "gain -0.5 % a week",
                "lose 0 kg a week",
                "lose 3 kg a week",
                "gain 5000 kcal a day",
                "gain 0,25 % a week",
                "gain 0.25 % a day",
                "lose 5 lb a week",
                "lose 16 oz a week",
                "gain 300 kcal a week",
                "lose NaN kg a week"
            })
    void goals_that_are_refused(String text) {
        assertThat(goal(text)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    private Optional<Goal> goal(String text) {
        return GoalGrammar.read(written(text), Optional.of(FilesInMemory.DAY), problems);
    }

    /** The day of these tests is the cooking day; a week later is the first day that is taken, 104 weeks later the last. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"78 kg, 7, 78", "78kg, 104, 78", "171 lb, 728, 77.56429527"})
    void weights_by_a_date(String weight, int days, double kg) {
        LocalDate by = FilesInMemory.DAY.plusDays(days);
        assertThat(goal("reach " + weight + " by  " + by)).hasValueSatisfying(goal -> {
            var reach = (Goal.ReachWeight) goal;
            assertThat(reach.weight().kg()).isCloseTo(kg, within(1e-8));
            assertThat(reach.from()).isEqualTo(FilesInMemory.DAY);
            assertThat(reach.by()).isEqualTo(by);
        });
        assertThat(problems.list()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(ints = {-1, 0, 6, 729})
    void days_that_are_too_near_or_too_far(int days) {
        assertThat(goal("reach 78 kg by " + FilesInMemory.DAY.plusDays(days))).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "reach",
                "reach 78 kg",
                "reach 78 kg by",
                "reach 78 by 2027-03-01",
                "reach 78 kg by 1 March",
                "reach 78 kg by 01.03.2027",
                "reach 78 kg by 2027-02-30",
                "reach 7.8 kg by 2027-03-01",
                "reach 78 kg in 10 weeks",
                "Reach 78 kg by 2027-03-01"
            })
    void weights_by_a_date_that_are_refused(String text) {
        assertThat(goal(text)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    /** Without foods there is no cooking day; the goal is checked all the same. */
    @Test
    void a_date_is_checked_without_a_cooking_day() {
        var written = written("reach 78 kg by 2027-02-30");
        assertThat(GoalGrammar.read(written, Optional.empty(), problems)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"38 cm, 84 cm, 38, 84", "15 in, 34 in, 38.1, 86.36", "0.38 m, 0.84 m, 38, 84", "15in, 84cm, 38.1, 84"})
    void girths(String neck, String waist, double neckCm, double waistCm) {
        Optional<Body> body = body("weight: 74 kg\ntape:\n  neck: %s\n  waist: %s".formatted(neck, waist));
        assertThat(problems.list()).isEmpty();
        assertThat(body.orElseThrow().tape()).hasValueSatisfying(tape -> {
            assertThat(tape.neck().cm()).isCloseTo(neckCm, within(1e-9));
            assertThat(tape.waist().cm()).isCloseTo(waistCm, within(1e-9));
        });
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"38", "380 mm", "3 ft", "15\"", "19 cm", "71 cm", "7.8 in", "27.7 in", "90 cm", "38,5 cm"})
    void necks_that_are_refused(String neck) {
        assertThat(body("weight: 74 kg\ntape:\n  neck: '%s'\n  waist: 84 cm".formatted(neck)))
                .isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @Test
    void body_fat_is_measured_or_asked_for() {
        assertThat(body("weight: 74 kg\nbody_fat: 15 %").flatMap(Body::fat))
                .contains(new BodyFat.Measured(Share.ofPercent(15)));
        assertThat(body("weight: 74 kg\nbody_fat: estimate").flatMap(Body::fat)).contains(BodyFat.ASKED_FOR);
        assertThat(body("weight: 74 kg").orElseThrow().fat()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(value = FatMethod.class, names = "NOT_SAID", mode = EnumSource.Mode.EXCLUDE)
    void body_fat_has_a_method(FatMethod method) {
        assertThat(body("weight: 74 kg\nbody_fat: 15 %\nbody_fat_method: " + method.label())
                        .flatMap(Body::fat))
                .contains(new BodyFat.Measured(Share.ofPercent(15), method));
    }

    @Test
    void experience_has_three_words() {
        for (Experience experience : Experience.values()) {
            assertThat(ExperienceGrammar.read(written(experience.label()), problems))
                    .contains(experience);
        }
        assertThat(problems.list()).isEmpty();
        assertThat(ExperienceGrammar.read(written("Novice"), problems)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    /** Levels: FAO/WHO/UNU, Human energy requirements (2004), Table 5.1. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"sedentary, 1.53", "active, 1.76", "vigorous, 2.25", "1.65, 1.65", "1, 1", "2.5, 2.5"})
    void activities(String text, double pal) {
        assertThat(ActivityGrammar.read(written(text), problems)).hasValueSatisfying(a -> {
            assertThat(a.pal()).isEqualTo(pal);
            assertThat(a.label()).isEqualTo(text);
        });
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"Active", "lazy", "0.9", "2.51", "1,65", "165"})
    void activities_that_are_refused(String text) {
        assertThat(ActivityGrammar.read(written(text), problems)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }

    @Test
    void portions_are_multiples_of_five_grams_or_whole_pieces() {
        var scale = PortionGrammar.onTheScale(problems);
        assertThat(scale.read(written("60 g"))).contains(60);
        assertThat(scale.read(written("60g"))).contains(60);
        var pieces = PortionGrammar.inPieces(written("50 g"), problems).orElseThrow();
        assertThat(pieces.read(written("1 piece"))).contains(50);
        assertThat(pieces.read(written("3 pieces"))).contains(150);
        assertThat(problems.list()).isEmpty();
        assertThat(scale.read(written("62 g"))).isEmpty();
        assertThat(scale.read(written("0 g"))).isEmpty();
        assertThat(scale.read(written("2 pieces"))).isEmpty();
        assertThat(pieces.read(written("100 g"))).isEmpty();
        assertThat(pieces.read(written("1.5 pieces"))).isEmpty();
        assertThat(problems.errors()).isEqualTo(5);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"12, 12", "0.25, 0.25", ".5, 0.5", "012, 12", "7.130, 7.130"})
    void numbers_are_exact_decimals(String text, BigDecimal number) {
        var range = NumberRange.of("amount", "0", "100", "g", "");
        assertThat(new Numbers(problems).decimal(written(text), range))
                .hasValueSatisfying(n -> assertThat(n).isEqualByComparingTo(number));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "1,5",
                "1e1",
                "NaN",
                "Infinity",
                "0x1F",
                "1_0",
                "1 0",
                "+5",
                "-1",
                "101",
                "5.",
                "٣",
                "1.2.3",
                "--1",
                "5f"
            })
    void what_is_no_plain_number_in_range_is_refused(String text) {
        var range = NumberRange.of("amount", "0", "100", "g", "");
        assertThat(new Numbers(problems).decimal(written(text), range)).isEmpty();
        assertThat(problems.errors()).isEqualTo(1);
    }
}
