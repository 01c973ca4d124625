package batchwright.report.book;

import batchwright.answer.PotAnswer;
import batchwright.answer.PotAnswer.PotFill;
import batchwright.report.print.Json;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;

/** What goes into each container from a pot as it came out. */
public final class PotText {
    private PotText() {}

    public static String of(PotAnswer answer) {
        var page = new Page();
        page.paragraph("%s, %s: %s g in the pot, from %s g raw."
                .formatted(
                        answer.dish(), answer.part(), Show.whole(answer.cookedGrams()), Show.whole(answer.rawGrams())));
        var table = new TextTable("  ")
                .left("for")
                .right("number")
                .right("g each")
                .right("planned")
                .right("kcal")
                .right("planned")
                .right("protein\ng")
                .right("planned");
        for (PotFill fill : answer.fills()) {
            table.row(
                    fill.eater(),
                    Integer.toString(fill.containers()),
                    Show.whole(fill.grams().now()),
                    Show.whole(fill.grams().planned()),
                    Show.whole(fill.kcal().now()),
                    Show.whole(fill.kcal().planned()),
                    Show.whole(fill.proteinG().now()),
                    Show.whole(fill.proteinG().planned()));
        }
        page.gap().table(table).gap();
        if (answer.overGrams().signum() != 0) {
            page.paragraph("%s g stay in the pot: spread them.".formatted(Show.whole(answer.overGrams())));
        }
        page.paragraph(
                "It came out at %s of its raw weight; the dish reckons with %s. If it does so again, put that into its yields."
                        .formatted(
                                Show.twoDecimals(factor(answer).doubleValue()),
                                Show.twoDecimals(answer.factorReckoned().doubleValue())));
        return page.toString();
    }

    private static BigDecimal factor(PotAnswer answer) {
        return answer.cookedGrams().divide(answer.rawGrams(), MathContext.DECIMAL64);
    }

    /** The same for scripts: schema batchwright.pot/1. */
    public static String json(PotAnswer answer) {
        ObjectNode root = Json.schema("pot/1")
                .put("dish", answer.dish())
                .put("part", answer.part())
                .put("raw_g", Json.tenth(answer.rawGrams()))
                .put("cooked_g", Json.tenth(answer.cookedGrams()))
                .put("factor", Json.thousandth(factor(answer).doubleValue()))
                .put("factor_reckoned", Json.thousandth(answer.factorReckoned().doubleValue()))
                .put("over_g", Json.tenth(answer.overGrams()));
        ArrayNode fills = root.putArray("fills");
        for (PotFill fill : answer.fills()) {
            fills.addObject()
                    .put("eater", fill.eater())
                    .put("containers", fill.containers())
                    .put("grams", fill.grams().now())
                    .put("planned_g", fill.grams().planned())
                    .put("energy_kcal", Json.tenth(fill.kcal().now()))
                    .put("planned_kcal", Json.tenth(fill.kcal().planned()))
                    .put("protein_g", Json.tenth(fill.proteinG().now()))
                    .put("planned_protein_g", Json.tenth(fill.proteinG().planned()));
        }
        return Json.text(root);
    }
}
