package batchwright.report.needs;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.projection.Stage;
import batchwright.needs.projection.Stages;
import batchwright.person.Goal;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;

/** The target in steps: a table, and why it may end early. */
final class StepsText {
    private static final String NOT_SHOWN = "-";

    private StepsText() {}

    static void print(GoalFinding goal, Stages steps, Page page) {
        page.heading("The target in steps of four weeks");
        if (goal.isHold()) {
            page.paragraph("  ", "  ", "Who holds the weight needs no steps.");
            return;
        }
        boolean compared = goal.reach().isEmpty();
        if (!steps.steps().isEmpty()) {
            table(goal, steps, compared, page);
        }
        if (steps.steps().stream().anyMatch(Stage::limited)) {
            page.paragraph(
                    "  ",
                    "  ",
                    "\"least\" marks rows where the goal would need less food than is planned here, so weight changes more slowly.");
        }
        if (steps.reach(goal)) {
            goal.reach().ifPresent(reach -> page.paragraph("  ", "  ", afterwards(goal, reach)));
        }
        steps.stopped().ifPresent(why -> page.paragraph("  ", "  ", stops(steps, why)));
        page.paragraph(
                "  ",
                "  ",
                "By the same model as the goal. Follow the rows instead of asking anew each time, for the water of the first"
                        + " month goes only once. When your weight is over 1 kg off, ask again with that weight.");
    }

    private static void table(GoalFinding goal, Stages steps, boolean compared, Page page) {
        var table = new TextTable("  ")
                .left("weeks")
                .right("kcal\na day")
                .right("kg\nthen")
                .right("kg\na week");
        if (compared) {
            table.right("kg then, at " + Show.whole(goal.intake().kcal()) + "\nall along");
        }
        table.left("");
        double before = goal.model().start().weightKg();
        for (Stage step : steps.steps()) {
            int weeks = step.lastWeek() - step.firstWeek() + 1;
            double counted = goal.reach()
                    .map(reach -> Math.min(step.lastWeek(), reach.weeks()) - step.firstWeek() + 1)
                    .orElse((double) weeks);
            double after = step.after().weightKg();
            String span = weeks == 1 ? "" + step.lastWeek() : step.firstWeek() + "-" + step.lastWeek();
            String kcal = Show.whole(step.intake().kcal());
            String rate = String.format(java.util.Locale.ROOT, "%+.2f", (after - before) / counted);
            String limited = step.limited() ? "least" : "";
            if (compared) {
                table.row(span, kcal, Show.oneDecimal(after), rate, held(steps, step), limited);
            } else {
                table.row(span, kcal, Show.oneDecimal(after), rate, limited);
            }
            before = after;
        }
        page.table(table);
    }

    private static String held(Stages steps, Stage step) {
        return steps.held()
                .after(step.lastWeek())
                .map(body -> Show.oneDecimal(body.weightKg()))
                .orElse(NOT_SHOWN);
    }

    private static String afterwards(GoalFinding goal, Goal.ReachWeight reach) {
        return goal.holdsAfterwards()
                .map(energy -> "From " + reach.by() + " on about " + Numerals.tens(energy.kcal()) + " kcal a day hold "
                        + Numerals.plain(reach.weight().kg()) + " kg.")
                .orElse("");
    }

    private static String stops(Stages steps, String why) {
        int last = steps.steps().stream().mapToInt(Stage::lastWeek).max().orElse(0);
        return "The steps end after week " + last + ": in the next one " + why
                + ". Hold the weight then; a doctor or dietitian can help to choose another goal.";
    }
}
