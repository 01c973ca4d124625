package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.report.html.chart.PercentChart;
import batchwright.report.html.chart.PercentChart.Dot;
import batchwright.report.html.chart.PercentChart.Row;
import batchwright.report.html.chart.PercentChart.Zone;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Energy and macros of each day in per cent of what the day must hold. They are taken from the printed totals. */
final class MacrosFigure {
    private static final double PER_CENT = 100;

    private final List<EatenDay> days;
    private final DayTarget target;

    private MacrosFigure(List<EatenDay> days, DayTarget target) {
        this.days = days;
        this.target = target;
    }

    static Figure of(List<EatenDay> days, DayTarget target) {
        return new MacrosFigure(days, target).figure();
    }

    private Figure figure() {
        List<Row> rows = new ArrayList<>();
        target.limits(Scope.DAY).forEach(limit -> row(rows, limit));
        String says = "In per cent of the target, a dot a day: 100 % is the aim for energy and the least for the rest;"
                + " shaded is as it should be.";
        return new Figure(
                "macros",
                "Each day beside its target",
                says,
                Optional.of(new PercentChart(rows).draw(says)),
                Optional.of(table(rows)));
    }

    /** In per cent of the aim; where there is none, of the least, or of the most. */
    private void row(List<Row> rows, Limit limit) {
        Nutrient nutrient = limit.measured();
        Range range = limit.range();
        int whole = target.aim(limit)
                .orElse(range.hasLeast() ? range.least() : range.most().orElse(0));
        if (whole == 0) {
            return;
        }
        List<Double> percents =
                days.stream().map(d -> d.total(nutrient) * PER_CENT / whole).toList();
        Optional<Double> to =
                range.most().stream().mapToObj(most -> most * PER_CENT / whole).findFirst();
        rows.add(new Row(
                nutrient == Nutrient.FRUIT_VEG ? "fruit and veg" : nutrient.label(),
                percents,
                Dot.FINE,
                Optional.of(new Zone(range.least() * PER_CENT / whole, to)),
                Optional.empty(),
                range(percents)));
    }

    private static String range(List<Double> percents) {
        String least =
                percent(percents.stream().mapToDouble(Double::doubleValue).min().orElse(0));
        String most =
                percent(percents.stream().mapToDouble(Double::doubleValue).max().orElse(0));
        return (least.equals(most) ? least : least + "–" + most) + " %";
    }

    private static String percent(double percent) {
        return Show.whole(BigDecimal.valueOf(percent));
    }

    private Table table(List<Row> rows) {
        var table = new Table("Per cent of the target, day by day").words("day");
        rows.forEach(row -> table.numbers(row.label() + " %"));
        for (int i = 0; i < days.size(); i++) {
            List<String> cells = new ArrayList<>(List.of("Day " + days.get(i).day()));
            for (Row row : rows) {
                cells.add(percent(row.percents().get(i)));
            }
            table.row(cells.toArray(new String[0]));
        }
        return table;
    }
}
