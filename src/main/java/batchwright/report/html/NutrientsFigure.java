package batchwright.report.html;

import batchwright.needs.intakes.Ceiling;
import batchwright.needs.intakes.Counts;
import batchwright.needs.intakes.Intake;
import batchwright.needs.intakes.Intake.Standing;
import batchwright.needs.intakes.Kind;
import batchwright.report.html.chart.PercentChart;
import batchwright.report.html.chart.PercentChart.Dot;
import batchwright.report.html.chart.PercentChart.Row;
import batchwright.report.html.chart.PercentChart.Zone;
import batchwright.report.html.chart.Svg;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.needs.IntakeWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which nutrients of an average day are short of published amounts. It must not alarm.
 *
 * @param noTable where nothing is published for the eater's age
 * @param tableNotes below the table
 */
public record NutrientsFigure(Figure figure, Optional<String> noTable, Table table, List<String> tableNotes) {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);
    private static final double FULL = 100;
    public static final String NO_ALARM =
            "A few days below are no deficiency: the amounts leave a margin over what most people need. What cooking takes from"
                    + " vitamins is not counted, nor the salt that you add. Whether a supplement makes sense is a question for a"
                    + " clinician.";

    static NutrientsFigure of(List<Intake> intakes) {
        String says = says(intakes);
        List<Row> rows = intakes.stream()
                .filter(i -> !isRule(i))
                .flatMap(i -> row(i).stream())
                .toList();
        Optional<Svg> picture = Optional.of(rows).filter(r -> !r.isEmpty()).map(r -> new PercentChart(r).draw(says));
        boolean isCompared = intakes.stream().anyMatch(i -> IntakeWords.isBySexAndAge(i.reference()));
        return new NutrientsFigure(
                new Figure("nutrients", "Nutrients of an average day", says, picture, Optional.empty()),
                isCompared ? Optional.empty() : Optional.of(IntakeWords.NO_TABLE),
                table(intakes),
                IntakeWords.NOTES);
    }

    /** What a rule of the plan ensures is in another picture. */
    private static boolean isRule(Intake intake) {
        return intake.reference()
                .recommended()
                .filter(r -> r.kind() == Kind.TARGET)
                .isPresent();
    }

    private static String says(List<Intake> intakes) {
        String below = named(intakes, Standing.SHORT, Standing.MAYBE_SHORT);
        String above = named(intakes, Standing.ABOVE, Standing.MAYBE_ABOVE);
        String sentence = below.isEmpty()
                ? "Nothing is below " + Intake.REACHED_PERCENT + " % of the published amount"
                : "Below " + Intake.REACHED_PERCENT + " % of the published amount: " + below;
        return sentence
                + (above.isEmpty() ? ", and nothing is known to be above a limit." : "; above a limit: " + above + ".");
    }

    private static String named(List<Intake> intakes, Standing certain, Standing maybe) {
        return intakes.stream()
                .filter(i -> i.standing() == certain || i.standing() == maybe)
                .map(i -> IntakeWords.name(i.nutrient()) + (i.standing() == maybe ? " (maybe)" : ""))
                .collect(Collectors.joining(", "));
    }

    /** Of what is recommended; where only a limit is published, of that. */
    private static Optional<Row> row(Intake intake) {
        String name = IntakeWords.name(intake.nutrient());
        Optional<BigDecimal> recommended = intake.reference().recommended().map(r -> r.amount());
        Optional<BigDecimal> limit =
                intake.reference().limit().filter(NutrientsFigure::ofFood).map(Ceiling::amount);
        String mark = intake.complete() ? "" : "≥ ";
        if (recommended.isPresent()) {
            double percent = percent(intake.aDay(), recommended.get());
            return Optional.of(new Row(
                    name,
                    List.of(percent),
                    dot(intake),
                    Optional.of(new Zone(FULL, limit.map(l -> percent(l, recommended.get())))),
                    limit.map(l -> percent(l, recommended.get())),
                    mark + intake.percent().orElseThrow() + " %"));
        }
        return limit.map(most -> new Row(
                name,
                List.of(percent(intake.aDay(), most)),
                dot(intake),
                Optional.of(new Zone(0, Optional.of(FULL))),
                Optional.of(FULL),
                mark + percent(intake.aDay(), most, 0) + " %"));
    }

    private static boolean ofFood(Ceiling limit) {
        return limit.counts() == Counts.EVERYTHING;
    }

    private static Dot dot(Intake intake) {
        return switch (intake.standing()) {
            case SHORT, MAYBE_SHORT -> Dot.BELOW;
            case ABOVE, MAYBE_ABOVE -> Dot.ABOVE;
            case WITHIN, NOT_COMPARED -> Dot.FINE;
        };
    }

    private static double percent(BigDecimal amount, BigDecimal whole) {
        return amount.multiply(PER_CENT).divide(whole, MathContext.DECIMAL64).doubleValue();
    }

    private static String percent(BigDecimal amount, BigDecimal whole, int decimals) {
        return amount.multiply(PER_CENT)
                .divide(whole, decimals, RoundingMode.DOWN)
                .toPlainString();
    }

    private static Table table(List<Intake> intakes) {
        var table = new Table("An average day beside published amounts")
                .words("nutrient")
                .numbers("a day")
                .numbers("least")
                .numbers("most")
                .numbers("%");
        for (Intake intake : intakes) {
            table.row(
                    IntakeWords.nameWithUnit(intake.nutrient()),
                    (intake.complete() ? "" : "≥ ") + IntakeWords.figure(intake.aDay()),
                    intake.reference()
                            .recommended()
                            .map(r -> IntakeWords.printed(r.amount()) + " "
                                    + r.kind().label())
                            .orElse(""),
                    intake.reference()
                            .limit()
                            .map(l -> IntakeWords.printed(l.amount()) + " " + IntakeWords.kind(l))
                            .orElse(""),
                    row(intake).map(Row::says).orElse(""));
        }
        return table;
    }
}
