package batchwright.needs.safety;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.person.Outcome;
import batchwright.person.Sex;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** The tables of decisions beside the table that they started from, cell by cell; where they differ there is a reason. */
class DecisionGridTest {
    private static final Path PROPOSED = Path.of("src/test/resources/published/safety_decision_grid.csv");
    private static final Map<String, Double> YEARS = Map.of("<18", 15.0, "18-64", 40.0, "65-69", 67.0, "70+", 80.0);
    private static final Map<String, Double> FAT =
            Map.of("under floor", 4.0, "low", 6.0, "lean", 10.0, "usual", 18.0, "high", 30.0);

    private record Cell(String age, String bmi, String action, String fat, Outcome proposed) {
        /** A man by DXA, whose error counts for nothing. */
        Body body() {
            double low = bmi.startsWith("<")
                    ? 14
                    : Double.parseDouble(bmi.replace(">=", "").replaceAll("-.*$", ""));
            var body = new Body(
                    Sex.MALE,
                    YEARS.getOrDefault(age, 0.0),
                    new Mass((low + 0.1) * 4),
                    new Length(200),
                    Optional.empty());
            return Optional.ofNullable(FAT.get(fat))
                    .map(percent -> body.withFat(new BodyFat.Measured(Share.ofPercent(percent), FatMethod.DXA)))
                    .orElse(body);
        }

        Outcome ours() {
            return action.equals("lose fast")
                    ? Outcome.REFUSE
                    : Decisions.listed(
                            body(),
                            Action.valueOf(action.toUpperCase(Locale.ROOT).replace(' ', '_')));
        }

        boolean is(String age, String action, double fromBmi, double toBmi) {
            double value = body().bmi();
            return this.age.equals(age) && this.action.equals(action) && value >= fromBmi && value < toBmi;
        }
    }

    private static final Map<String, Predicate<Cell>> REASONS = reasons();

    private static Map<String, Predicate<Cell>> reasons() {
        Map<String, Predicate<Cell>> reasons = new LinkedHashMap<>();
        reasons.put(
                "from BMI 35 on it is said that a doctor can offer more; saying it is a warning",
                cell -> cell.is("18-64", "lose slow", 35, 40) || cell.is("18-64", "hold", 35, 40));
        reasons.put(
                "every gain at BMI 30 or more is asked about, the slow one of a younger adult too",
                cell -> cell.is("18-64", "gain slow", 30, 35));
        reasons.put(
                "0.25-0.5 % a week is what Iraki et al. 2019 advise: no warning in the normal range",
                cell -> cell.is("18-64", "gain usual", 22, 25));
        reasons.put(
                "a loss from under 8 % (men) or 16 % (women) would end below the floor, whatever is answered",
                cell -> cell.fat().equals("low") && cell.action().equals("lose slow"));
        reasons.put(
                "an ordinary fat that is known is no reason to be stricter than with fat that is not",
                cell -> cell.fat().equals("usual") && cell.action().equals("gain fast"));
        return reasons;
    }

    private static List<Cell> proposed() throws IOException {
        return Files.readAllLines(PROPOSED).stream()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .map(line -> line.split(",", -1))
                .map(c -> new Cell(c[0], c[1], c[2], c[3], Outcome.valueOf(c[4].toUpperCase(Locale.ROOT))))
                .toList();
    }

    @Test
    void differs_from_the_proposal_only_for_a_reason() throws IOException {
        List<Cell> cells = proposed();
        List<String> unexplained = cells.stream()
                .filter(cell -> cell.ours() != cell.proposed())
                .filter(cell -> REASONS.values().stream().noneMatch(reason -> reason.test(cell)))
                .map(cell -> cell + ", ours " + cell.ours())
                .toList();

        assertThat(cells).hasSize(1680);
        assertThat(unexplained).isEmpty();
    }

    /** A reason that explains nothing is out of date. */
    @Test
    void every_reason_is_needed() throws IOException {
        List<Cell> differing = proposed().stream()
                .filter(cell -> cell.ours() != cell.proposed())
                .toList();
        assertThat(REASONS)
                .allSatisfy((why, reason) -> assertThat(differing).as(why).anyMatch(reason));
        assertThat(differing).hasSizeLessThan(60);
    }

    /** Every age, BMI and action has its row, and an ask has its question. */
    @Test
    void every_reason_of_the_tables_is_known() {
        assertThat(DecisionReason.all()).containsKeys("under_18", "refeeding_risk", "underweight", "gain_mostly_fat");
    }
}
