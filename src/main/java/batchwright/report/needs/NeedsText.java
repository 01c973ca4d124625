package batchwright.report.needs;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.needs.Needs;
import batchwright.needs.Outlook;
import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.learning.Learned;
import batchwright.needs.target.TargetLine;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;
import java.util.Optional;

/** Needs for people: the answer, then where it comes from. Cautions that stop planning stand first. */
public final class NeedsText {
    private final Needs needs;
    private final Page page = new Page();

    private NeedsText(Needs needs) {
        this.needs = needs;
    }

    public static String of(Needs needs, Outlook outlook) {
        return of(needs, outlook, Optional.empty());
    }

    /** @param learned what the eater's own weighings say, when there are any */
    public static String of(Needs needs, Outlook outlook, Optional<Learned> learned) {
        return new NeedsText(needs).text(outlook, learned);
    }

    private String text(Outlook outlook, Optional<Learned> learned) {
        if (needs.hidesFigures()) {
            noFigures();
            return page.toString();
        }
        if (learned.filter(Learned::hidesFigures).isPresent()) {
            LearnedText.print(learned.orElseThrow(), page);
            return page.toString();
        }
        needs.target().ifPresentOrElse(this::answer, this::noTarget);
        learned.ifPresent(own -> LearnedText.print(own, page));
        ahead(outlook);
        BodyFatText.write(needs, page);
        BodyMassText.write(needs, page);
        resting();
        TotalText.write(needs, page);
        GoalText.write(needs, page);
        target();
        GuidesText.write(needs, page);
        sources();
        cautions(
                "Cautions",
                needs.cautions().stream().filter(c -> !c.stopsPlanning()).toList());
        return page.toString();
    }

    private void ahead(Outlook outlook) {
        if (outlook.weeks().isPresent()) {
            ProjectionText.print(outlook.projection(needs), page);
        }
        outlook.steps(needs).ifPresent(steps -> StepsText.print(needs.goal().orElseThrow(), steps, page));
    }

    private void answer(DayTarget target) {
        page.paragraph(needs.eater().name() + ": " + target.energyAimKcal() + " kcal a day ("
                + target.day(Nutrient.ENERGY).says() + "), at least "
                + target.day(Nutrient.PROTEIN).least() + " g of protein.");
        page.paragraph("By " + inUse().equation() + " and PAL " + pal() + "; goal: " + needs.goalSays() + ".");
    }

    private void noTarget() {
        page.paragraph(needs.eater().name() + ": no target and no plan here, for this reason:");
        cautions("", needs.cautions().stream().filter(Caution::stopsPlanning).toList());
    }

    private void noFigures() {
        page.paragraph(needs.eater().name() + ": no figures and no plan here, for this reason:");
        cautions("", needs.cautions());
    }

    private Estimate inUse() {
        return needs.resting().get(0);
    }

    private String pal() {
        String pal = Show.pal(needs.eater().activity().pal());
        String label = needs.eater().activity().label();
        return label.equals(pal) ? pal : pal + " (" + label + ")";
    }

    private void resting() {
        page.heading("Resting energy by published equations, kcal a day");
        var table = new TextTable("  ")
                .left("")
                .left("equation")
                .right("kcal")
                .right("+-")
                .left("note");
        for (Estimate e : needs.resting()) {
            table.row(
                    e.used() ? "used" : "",
                    e.equation(),
                    Show.whole(e.perDay().kcal()),
                    Show.whole(e.errorKcal()),
                    String.join("; ", e.caveats()));
        }
        page.table(table);
        page.paragraph("  ", "  ", "+- is the usual error for one person. A note says why an equation may not fit.");
    }

    private void target() {
        if (needs.lines().isEmpty()) {
            return;
        }
        page.heading("Target, each day");
        for (TargetLine line : needs.lines()) {
            page.paragraph("  ", "    ", Show.capital(line.name()) + ": " + line.says() + ". [" + line.source() + "]");
        }
    }

    private void sources() {
        page.heading("Sources of the equations");
        for (Estimate e : needs.resting()) {
            page.paragraph("  ", "    ", e.equation() + ": " + e.source() + ".");
        }
        needs.secondOpinions().forEach(e -> page.paragraph("  ", "    ", e.equation() + ": " + e.source() + "."));
    }

    private void cautions(String heading, List<Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        if (!heading.isEmpty()) {
            page.heading(heading);
        }
        cautions.forEach(c -> page.item(c.text() + " [" + c.source() + "]"));
    }
}
