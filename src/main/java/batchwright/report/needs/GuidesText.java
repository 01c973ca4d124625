package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.intakes.Reference;
import batchwright.needs.target.Guides;
import batchwright.needs.target.TargetLine;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;

/** What is published beside the target and is no rule of a plan: guides in words, and amounts by sex and age in a table. */
final class GuidesText {
    private GuidesText() {}

    /** Nothing when a caution stops planning. */
    static void write(Needs needs, Page page) {
        needs.guides().ifPresent(guides -> lines(guides, page));
        List<Reference> references =
                needs.references().stream().filter(IntakeWords::isBySexAndAge).toList();
        if (!references.isEmpty()) {
            table(references, page);
        } else if (needs.guides().isPresent()) {
            page.gap().paragraph("  ", "  ", IntakeWords.NO_TABLE);
        }
    }

    private static void lines(Guides guides, Page page) {
        page.heading("Guides, each day: shown with a plan, but no rule of it");
        for (TargetLine line : guides.lines()) {
            page.paragraph("  ", "    ", Show.capital(line.name()) + ": " + line.says() + ". [" + line.source() + "]");
        }
    }

    private static void table(List<Reference> references, Page page) {
        page.heading("Published amounts, each day, by sex and age");
        var table = new TextTable("  ")
                .left("")
                .right("least")
                .left("")
                .right("most")
                .left("");
        for (Reference reference : references) {
            table.row(
                    IntakeWords.nameWithUnit(reference.nutrient()),
                    reference
                            .recommended()
                            .map(r -> IntakeWords.printed(r.amount()))
                            .orElse(""),
                    reference.recommended().map(r -> r.kind().label()).orElse(""),
                    reference.limit().map(l -> IntakeWords.printed(l.amount())).orElse(""),
                    reference.limit().map(IntakeWords::kind).orElse(""));
        }
        page.table(table);
        IntakeWords.explainKinds(page);
    }
}
