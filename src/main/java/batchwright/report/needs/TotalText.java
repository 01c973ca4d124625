package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.total.MetCost;
import batchwright.needs.total.PalEvidence;
import batchwright.needs.total.TotalRange;
import batchwright.person.ActivityFacts;
import batchwright.person.Diary;
import batchwright.quantity.Mass;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.stream.Collectors;

/** Total energy for people: the figure, how far off it may be, the diary behind it, second opinions. */
final class TotalText {
    private static final int MINUTES_AN_HOUR = 60;

    private final Needs needs;
    private final Page page;

    private TotalText(Needs needs, Page page) {
        this.needs = needs;
        this.page = page;
    }

    static void write(Needs needs, Page page) {
        new TotalText(needs, page).write();
    }

    private void write() {
        page.heading("Total energy, kcal a day");
        item(Show.whole(needs.total().kcal()) + " holds the weight: "
                + needs.totalSource().text() + ".");
        range();
        if (needs.eater().activity() instanceof Diary diary) {
            diary(diary);
        }
        if (needs.eater().activity() instanceof ActivityFacts facts) {
            facts(facts);
        }
        needs.secondOpinions().forEach(this::secondOpinion);
        item("Goal: " + needs.goalSays() + ".");
    }

    private void range() {
        TotalRange range = needs.totalRange();
        PalEvidence pal = needs.palEvidence();
        item("8 of 10 people of this description need between "
                + Numerals.tens(range.least().kcal()) + " and "
                + Numerals.tens(range.most().kcal()) + " kcal. Weigh yourself for some weeks and correct.");
        item("PAL alone lies from "
                + Show.twoDecimals(pal.leastPal())
                + " to "
                + Show.twoDecimals(pal.mostPal()) + " for 8 of 10 [" + pal.source()
                + "]; resting energy differs by 9 % (SD) and the error of body fat.");
        pal.caveats().forEach(caveat -> item(Show.capital(caveat) + "."));
    }

    private void diary(Diary diary) {
        var table = new TextTable("    ").right("time").right("METs").left("");
        diary.entries()
                .forEach(entry -> table.row(
                        time(entry.minutes()),
                        entry.activity().met().toPlainString(),
                        entry.activity().name()));
        page.table(table);
        Mass weight = needs.eater().body().weight();
        item("By weight alone the same diary is "
                + Show.whole(MetCost.ofDayByHour(diary, weight).kcal())
                + " kcal a day (1 kcal per MET, kg and hour) or "
                + Show.whole(MetCost.ofDayByOxygen(diary, weight).kcal())
                + " (3.5 ml of oxygen). That overstates heavy people, so it is not used.");
    }

    private void facts(ActivityFacts facts) {
        String training = facts.training().stream()
                .map(entry -> time(entry.minutes()) + " h " + entry.activity().name())
                .collect(Collectors.joining("; "));
        item("A day " + facts.day().meaning() + ", PAL " + Show.pal(facts.day().pal()) + "; " + facts.stepsADay()
                + " steps; training a week: " + (training.isEmpty() ? "none" : training) + ".");
    }

    /** Such as 7:30. */
    private static String time(int minutes) {
        int rest = minutes % MINUTES_AN_HOUR;
        return minutes / MINUTES_AN_HOUR + (rest < 10 ? ":0" : ":") + rest;
    }

    private void secondOpinion(Estimate second) {
        String caveats =
                second.caveats().isEmpty() ? "" : " " + Show.capital(String.join("; ", second.caveats())) + ".";
        item("Second opinion: " + Show.whole(second.perDay().kcal()) + " +- " + Show.whole(second.errorKcal()) + " by "
                + second.equation() + "." + caveats);
    }

    private void item(String text) {
        page.paragraph("  ", "    ", text);
    }
}
