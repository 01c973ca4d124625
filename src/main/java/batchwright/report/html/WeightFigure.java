package batchwright.report.html;

import batchwright.needs.Needs;
import batchwright.needs.Outlook;
import batchwright.needs.caution.Caution;
import batchwright.needs.projection.ProjectedWeek;
import batchwright.needs.projection.Projection;
import batchwright.report.print.Show;
import java.util.List;

/** Where weight goes when the target is eaten for some weeks, where the profile allows a projection. */
final class WeightFigure {
    private static final int WEEKS = 12;

    private WeightFigure() {}

    static void write(Html html, Needs needs) {
        Outlook.projection(needs, WEEKS).ifPresent(projection -> write(html, projection));
    }

    private static void write(Html html, Projection projection) {
        ProjectedWeek last = projection.last();
        String says = last.week() == 0 ? projection.stops().map(Caution::text).orElse("") : sentence(projection, last);
        Figure.open(html, "weight", "Where weight goes", says);
        if (last.week() > 0) {
            new WeightChart(projection.path()).draw(html, says);
            Figure.table(html, table(projection));
        }
        html.open("ul", "class", "note");
        projection.cautions().forEach(c -> html.element("li", c.text() + " [" + c.source() + "]"));
        html.close().close().line();
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
