package batchwright.report.needs;

import batchwright.person.CommonMultiplier;
import batchwright.person.Compendium2011;
import batchwright.person.FaoLevel;
import batchwright.person.ListedActivity;
import batchwright.person.UsualDay;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;

/** What a profile may say of activity, for people. */
public final class ActivitiesText {
    private static final String INDENT = "  ";

    private final Page page = new Page();

    private ActivitiesText() {}

    public static String list() {
        return new ActivitiesText().text();
    }

    private String text() {
        page.paragraph(
                "Five ways to say how active the whole day is, training included. PAL is total energy divided by resting"
                        + " energy; a PAL above 2.5 is refused.");
        facts();
        levels();
        page.heading("A number").paragraph(INDENT, INDENT, "activity: 1.65, when you know your PAL.");
        multipliers();
        diary();
        return page.toString();
    }

    private void facts() {
        page.heading("Facts: what can be counted, the surest without a diary");
        var table = new TextTable(INDENT).left("").right("PAL").left("");
        for (UsualDay day : UsualDay.values()) {
            table.row("day: " + day.label(), Show.pal(day.pal()), day.meaning());
        }
        page.table(table);
        page.paragraph(
                INDENT,
                INDENT,
                "activity: facts, and the lines day; steps: 7000 or walking: 40 min, of a usual day without training; training:"
                        + " 3 h weights, 45 min jogging, a week. Each 1000 steps above 4000 add 0.02; training adds hours a day x (METs"
                        + " - 1) / 24 / 0.9.");
    }

    private void levels() {
        page.heading("A level of FAO/WHO/UNU 2004");
        var table = new TextTable(INDENT).left("").right("PAL").left("of the band");
        for (FaoLevel level : FaoLevel.values()) {
            table.row(
                    "activity: " + level.label(),
                    Show.pal(level.pal()),
                    Show.twoDecimals(level.leastPal()) + " to " + Show.twoDecimals(level.mostPal()));
        }
        page.table(table);
    }

    private void multipliers() {
        page.heading("A multiplier of common practice, without a study behind it");
        var table = new TextTable(INDENT).left("").right("PAL").left("");
        for (CommonMultiplier multiplier : CommonMultiplier.values()) {
            table.row("activity: " + multiplier.label(), Show.pal(multiplier.pal()), multiplier.meaning());
        }
        page.table(table);
    }

    private void diary() {
        page.heading("A diary");
        page.paragraph(
                INDENT,
                INDENT,
                "activity: diary, and below it a block \"diary:\" with a line for each activity, such as \"sleeping: 8 h\"."
                        + " The times fill a day (24 h) or a week (168 h). METs are multiples of rest, by the Compendium of"
                        + " Physical Activities of 2011 (Ainsworth et al.); the code is theirs.");
        page.gap();
        var table = new TextTable(INDENT)
                .left("activity")
                .right("METs")
                .left("code")
                .left("");
        for (ListedActivity activity : Compendium2011.activities().values()) {
            table.row(activity.id(), activity.met().toPlainString(), activity.code(), activity.name());
        }
        page.table(table);
    }
}
