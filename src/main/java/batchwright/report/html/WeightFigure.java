package batchwright.report.html;

import batchwright.needs.Needs;
import batchwright.needs.Outlook;
import batchwright.needs.caution.Caution;
import batchwright.needs.projection.ProjectedWeek;
import batchwright.needs.projection.Projection;
import batchwright.report.html.chart.WeightChart;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Optional;

/** Where weight goes when the target is eaten for some weeks, where the profile allows a projection. */
public record WeightFigure(Figure figure, List<String> cautions) {
    private static final int WEEKS = 12;

    static Optional<WeightFigure> of(Needs needs) {
        return Outlook.projection(needs, WEEKS).map(WeightFigure::of);
    }

    private static WeightFigure of(Projection projection) {
        ProjectedWeek last = projection.last();
        boolean isDrawn = last.week() > 0;
        String says = isDrawn
                ? sentence(projection, last)
                : projection.stops().map(Caution::text).orElse("");
        return new WeightFigure(
                new Figure(
                        "weight",
                        "Where weight goes",
                        says,
                        isDrawn ? Optional.of(new WeightChart(projection.path()).draw(says)) : Optional.empty(),
                        isDrawn ? Optional.of(table(projection)) : Optional.empty()),
                projection.cautions().stream()
                        .map(c -> c.text() + " [" + c.source() + "]")
                        .toList());
    }

    private static String sentence(Projection projection, ProjectedWeek last) {
        String range = last.lightest()
                .map(lightest -> "it may well be " + kg(lightest.weightKg()) + " to ")
                .orElse("it may be up to ");
        return Show.count(last.week(), "week", "weeks") + " at the target of "
                + Show.whole(projection.intake().kcal()) + " kcal a day lead from "
                + kg(projection.now().likely().weightKg()) + " kg to about "
                + kg(last.likely().weightKg()) + " kg; " + range
                + kg(last.heaviest().weightKg())
                + " kg, because what holds your weight is estimated.";
    }

    private static Table table(Projection projection) {
        var table = new Table("Weight by week")
                .words("week")
                .numbers("kg")
                .numbers("if you need more")
                .numbers("if you need less")
                .numbers("fat kg");
        List<ProjectedWeek> path = projection.path();
        path.forEach(week -> table.row(
                week.week() == 0 ? "now" : Integer.toString(week.week()),
                kg(week.likely().weightKg()),
                week.lightest().map(b -> kg(b.weightKg())).orElse("not shown"),
                kg(week.heaviest().weightKg()),
                kg(week.likely().fatKg())));
        return table;
    }

    private static String kg(double value) {
        return Show.oneDecimal(value);
    }
}
