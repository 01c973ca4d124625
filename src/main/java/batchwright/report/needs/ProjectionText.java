package batchwright.report.needs;

import batchwright.needs.caution.Caution;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.goal.EnergyPerKg;
import batchwright.needs.projection.ProjectedWeek;
import batchwright.needs.projection.Projection;
import batchwright.quantity.Energy;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;
import java.util.Optional;

/** Where weight goes: one sentence, a chart, a table, and what to know before trusting it. */
final class ProjectionText {
    private static final int MOST_ROWS = 16;
    private static final double DAYS_A_WEEK = 7;
    /** Nobody should follow the rule for longer. */
    private static final int MOST_WEEKS_OF_RULE = 26;

    private static final double WORTH_SAYING_KG = 0.1;
    private static final double TEN = 10;
    private static final String NOT_SHOWN = "-";

    private final Projection projection;
    private final Page page;

    private ProjectionText(Projection projection, Page page) {
        this.projection = projection;
        this.page = page;
    }

    /** @param asked empty when a caution stops planning */
    static void print(Optional<Projection> asked, Page page) {
        page.heading("Where weight goes");
        asked.ifPresentOrElse(
                projection -> print(projection, page),
                () -> page.paragraph("  ", "  ", "No projection where planning stops."));
    }

    private static void print(Projection projection, Page page) {
        var text = new ProjectionText(projection, page);
        text.answer();
        if (projection.last().week() > 0) {
            page.gap();
            ProjectionChart.lines(projection.path()).forEach(page::line);
        }
        page.gap();
        text.table();
        text.cautions();
    }

    private void answer() {
        ProjectedWeek last = projection.last();
        projection.stops().ifPresent(this::caution);
        if (last.week() > 0) {
            page.paragraph("  ", "  ", sentence(last) + rule(last));
            page.paragraph("  ", "  ", whyARange());
        }
    }

    private String sentence(ProjectedWeek last) {
        String range = last.lightest()
                .map(lightest -> "range " + kg(lightest.weightKg()) + " to ")
                .orElse("at most ");
        return Show.count(last.week(), "week", "weeks") + " of "
                + Show.whole(projection.intake().kcal()) + " kcal a day: from "
                + kg(projection.now().likely().weightKg()) + " kg to about "
                + kg(last.likely().weightKg()) + " kg, " + range
                + kg(last.heaviest().weightKg()) + " kg.";
    }

    /** What the rule behind the goal would say, where it promises more than the model. */
    private String rule(ProjectedWeek last) {
        double change = projection.intake().kcal() - projection.total().likely().kcal();
        double kg = change * DAYS_A_WEEK * last.week() / EnergyPerKg.RULE_KCAL;
        double projected = last.likely().weightKg() - projection.now().likely().weightKg();
        if (last.week() > MOST_WEEKS_OF_RULE || Math.abs(kg) < Math.abs(projected) + WORTH_SAYING_KG) {
            return "";
        }
        return " By " + Show.whole(EnergyPerKg.RULE_KCAL) + " kcal per kg alone it would be "
                + kg(projection.now().likely().weightKg() + kg) + " kg, but a "
                + (kg < 0 ? "lighter body needs less." : "heavier body needs more.");
    }

    private String whyARange() {
        return "The range is there because what holds your weight is estimated: "
                + Show.whole(projection.total().likely().kcal())
                + " kcal a day, but it may well be " + tens(projection.total().least()) + " to "
                + tens(projection.total().most()) + ".";
    }

    private void table() {
        var table = new TextTable("  ")
                .right("week")
                .right("weight\nkg")
                .right("range\nkg")
                .right("fat\nkg")
                .right("lean\nkg")
                .right("fat\n%");
        for (ProjectedWeek week : shown()) {
            BodyState body = week.likely();
            table.row(
                    week.week() == 0 ? "now" : Integer.toString(week.week()),
                    kg(body.weightKg()),
                    range(week),
                    kg(body.fatKg()),
                    kg(body.leanKg()),
                    Show.whole(body.fatPercent()));
        }
        page.table(table);
    }

    private static String range(ProjectedWeek week) {
        if (week.week() == 0) {
            return "";
        }
        return week.lightest().map(body -> kg(body.weightKg())).orElse(NOT_SHOWN) + " to "
                + kg(week.heaviest().weightKg());
    }

    /** Every week, or every second, fourth, eighth; always the last. */
    private List<ProjectedWeek> shown() {
        int last = projection.last().week();
        int each = 1;
        while (last / each > MOST_ROWS) {
            each *= 2;
        }
        int step = each;
        return projection.path().stream()
                .filter(week -> week.week() % step == 0 || week.week() == last)
                .toList();
    }

    private void cautions() {
        page.gap();
        Optional<Caution> saidFirst = projection.stops();
        projection.cautions().stream()
                .filter(caution -> !saidFirst.equals(Optional.of(caution)))
                .forEach(this::caution);
    }

    private void caution(Caution caution) {
        page.item(caution.text() + " [" + caution.source() + "]");
    }

    /** An estimate, to the nearest ten. */
    private static String tens(Energy energy) {
        return Show.whole(Math.round(energy.kcal() / TEN) * TEN);
    }

    private static String kg(double value) {
        return Show.oneDecimal(value);
    }
}
