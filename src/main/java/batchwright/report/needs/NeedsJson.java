package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.Outlook;
import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.learning.Learned;
import batchwright.needs.target.TargetLine;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Needs for scripts: schema batchwright.needs/1. */
public final class NeedsJson {
    private static final Set<String> SHOWN_ALWAYS = Set.of("schema", "eater", "name", "cautions");

    private NeedsJson() {}

    public static String of(Needs needs, Outlook outlook) {
        return of(needs, outlook, Optional.empty());
    }

    /** @param learned what the eater's own weighings say, when there are any */
    public static String of(Needs needs, Outlook outlook, Optional<Learned> learned) {
        boolean hides =
                needs.hidesFigures() || learned.filter(Learned::hidesFigures).isPresent();
        ObjectNode root = answer(needs, hides);
        learned.ifPresent(own -> root.set("weighings", LearnedJson.of(own)));
        if (hides && !needs.hidesFigures()) {
            return Json.text(root);
        }
        if (outlook.weeks().isPresent()) {
            outlook.projection(needs)
                    .ifPresentOrElse(
                            asked -> root.set("projection", ProjectionJson.of(asked)),
                            () -> root.putNull("projection"));
        }
        if (outlook.stepWeeks().isPresent()) {
            outlook.steps(needs)
                    .ifPresentOrElse(asked -> root.set("steps", StepsJson.of(asked)), () -> root.putNull("steps"));
        }
        return Json.text(root);
    }

    private static ObjectNode answer(Needs needs, boolean hides) {
        ObjectNode root = object(needs);
        if (hides) {
            WithoutFigures.in(root, SHOWN_ALWAYS);
        }
        return root.put("figures_hidden", hides);
    }

    private static ObjectNode object(Needs needs) {
        ObjectNode root = Json.schema("needs/1");
        root.put("eater", needs.eater().id()).put("name", needs.eater().name());
        ArrayNode resting = root.putArray("resting");
        needs.resting()
                .forEach(estimate -> estimate(resting.addObject(), estimate).put("used", estimate.used()));
        BodyFatJson.put(root, needs);
        BodyMassJson.put(root, needs);
        ActivityJson.put(root, needs);
        root.put("total_kcal", tenth(needs.total().kcal()));
        root.put("total_source", needs.totalSource().text());
        TotalJson.put(root, needs);
        GoalJson.put(root, needs);
        TargetJson.put(root, needs.target());
        lines(root.putArray("target_lines"), needs.lines());
        GuidesJson.put(root, needs);
        cautions(root, needs);
        return root;
    }

    public static void cautions(ObjectNode root, Needs needs) {
        ArrayNode cautions = root.putArray("cautions");
        needs.cautions().forEach(caution -> caution(cautions.addObject(), caution));
    }

    static void lines(ArrayNode node, List<TargetLine> lines) {
        lines.forEach(line -> node.addObject()
                .put("name", line.name())
                .put("says", line.says())
                .put("source", line.source().text()));
    }

    static BigDecimal tenth(double value) {
        return Json.tenth(BigDecimal.valueOf(value));
    }

    static ObjectNode estimate(ObjectNode node, Estimate estimate) {
        node.put("equation", estimate.equation())
                .put("kcal_per_day", tenth(estimate.perDay().kcal()))
                .put("error_kcal", tenth(estimate.errorKcal()))
                .put("source", estimate.source().text());
        ArrayNode caveats = node.putArray("caveats");
        estimate.caveats().forEach(caveats::add);
        return node;
    }

    public static void caution(ObjectNode node, Caution caution) {
        node.put("code", caution.code())
                .put("text", caution.text())
                .put("stops_planning", caution.stopsPlanning())
                .put("source", caution.source().text());
        ArrayNode asks = node.putArray("asks");
        caution.asks().forEach(asks::add);
    }
}
