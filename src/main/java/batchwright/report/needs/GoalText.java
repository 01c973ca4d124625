package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.report.print.Page;

/** What stands beside a goal, for people: the band of advice, and what to expect of a date. */
final class GoalText {
    private GoalText() {}

    static void write(Needs needs, Page page) {
        needs.goal().ifPresent(goal -> {
            goal.notes().forEach(note -> page.paragraph("  ", "    ", note.says() + ". [" + note.source() + "]"));
            goal.held().ifPresent(held -> page.line("  needs --stages shows the targets four weeks apart."));
            goal.weeksToReach()
                    .ifPresent(weeks -> page.line("  needs --weeks " + weeks + " shows how far apart people end."));
        });
    }
}
