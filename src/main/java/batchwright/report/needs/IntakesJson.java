package batchwright.report.needs;

import batchwright.needs.intakes.Ceiling;
import batchwright.needs.intakes.Intake;
import batchwright.needs.intakes.Recommended;
import batchwright.needs.intakes.Reference;
import batchwright.report.print.Json;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

/** A nutrient of an average day beside published amounts, for scripts; amounts to 0.01 of their unit. */
public final class IntakesJson {
    private static final int DECIMALS = 2;

    private IntakesJson() {}

    public static void put(ObjectNode node, Intake intake) {
        nutrient(node, intake.reference());
        node.put("per_day", Show.plain(intake.aDay(), DECIMALS)).put("complete", intake.complete());
        node.put("standing", intake.standing().name().toLowerCase(Locale.ROOT));
        intake.percent().ifPresentOrElse(percent -> node.put("percent", percent), () -> node.putNull("percent"));
        number(node, "counted_by_limit", intake.counted());
        published(node, intake.reference());
    }

    /** Which nutrient: INFOODS tagname, name, unit. */
    static void nutrient(ObjectNode node, Reference reference) {
        node.put("nutrient", reference.nutrient().tagname())
                .put("name", IntakeWords.name(reference.nutrient()))
                .put("unit", reference.nutrient().unit());
    }

    static void published(ObjectNode node, Reference reference) {
        Optional<Recommended> recommended = reference.recommended();
        number(node, "recommended", recommended.map(Recommended::amount));
        Json.text(node, "recommended_kind", recommended.map(r -> r.kind().label()));
        Json.text(node, "recommended_source", recommended.map(r -> r.source().text()));
        Optional<Ceiling> limit = reference.limit();
        number(node, "limit", limit.map(Ceiling::amount));
        Json.text(node, "limit_kind", limit.map(l -> l.kind().label()));
        Json.text(node, "limit_counts", limit.map(l -> l.counts().name().toLowerCase(Locale.ROOT)));
        Json.text(node, "limit_source", limit.map(l -> l.source().text()));
    }

    private static void number(ObjectNode node, String name, Optional<BigDecimal> amount) {
        amount.ifPresentOrElse(a -> node.put(name, Show.plain(a, DECIMALS)), () -> node.putNull(name));
    }
}
