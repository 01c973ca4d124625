package batchwright.report.needs;

import batchwright.needs.intakes.Intake;
import batchwright.needs.intakes.Reference;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;

/** Every nutrient of an average day beside published amounts. */
public final class IntakesTable {
    private final List<Intake> intakes;
    private final Page page;

    public IntakesTable(List<Intake> intakes, Page page) {
        this.intakes = intakes;
        this.page = page;
    }

    public void write() {
        var table = new TextTable("  ")
                .left("")
                .right("a day")
                .right("%")
                .right("least")
                .left("")
                .right("most")
                .left("")
                .left("");
        intakes.forEach(intake -> row(table, intake));
        page.table(table);
        Show.atLeastNote(page, table);
    }

    private static void row(TextTable table, Intake intake) {
        Reference reference = intake.reference();
        table.row(
                IntakeWords.nameWithUnit(intake.nutrient()),
                Show.mark(intake.complete()) + IntakeWords.figure(intake.aDay()),
                intake.percent()
                        .map(percent -> Show.mark(intake.complete()) + percent)
                        .orElse(""),
                reference
                        .recommended()
                        .map(r -> IntakeWords.printed(r.amount()))
                        .orElse(""),
                reference.recommended().map(r -> r.kind().label()).orElse(""),
                reference.limit().map(l -> IntakeWords.printed(l.amount())).orElse(""),
                reference.limit().map(IntakeWords::kind).orElse(""),
                standing(intake.standing()));
    }

    private static String standing(Intake.Standing standing) {
        return switch (standing) {
            case WITHIN, NOT_COMPARED -> "";
            case SHORT -> "below";
            case MAYBE_SHORT -> "below?";
            case ABOVE -> "above";
            case MAYBE_ABOVE -> "above?";
        };
    }

    /** What has to be known about the tables of all eaters. */
    public static void explain(Page page) {
        page.paragraph(
                "  ",
                "  ",
                "% is of the least; below means less than " + Intake.REACHED_PERCENT
                        + " %. Target: a rule of the plan. Guide: 10 % of energy.");
        IntakeWords.explainKinds(page);
        page.paragraph(
                "  ",
                "  ",
                "Sodium is without the salt that you add. Sugar is all sugar, that of fruit and milk included; limits are for free or added sugar, which food tables do not"
                        + " tell apart. Carbohydrate has the fibre in it. Skin makes vitamin D too, in the sun. Pasta, rice and"
                        + " flour of the catalogue may be enriched with iron and folic acid, as in the United States: where yours"
                        + " are not, there is less.");
    }
}
