package batchwright.report.needs;

import batchwright.needs.caution.Caution;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetAdvice;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.KcalBand;
import batchwright.needs.weighing.TrendDay;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What weighings say, for scripts: batchwright.weight/1. */
public final class LearnedJson {
    private LearnedJson() {}

    public static ObjectNode of(Learned learned) {
        ObjectNode root =
                Json.schema("weight/1").put("eater", learned.needs().eater().id());
        advice(root.putObject("advice"), learned.advice());
        if (learned.hidesFigures()) {
            return root;
        }
        Expenditure seen = learned.seen();
        root.putObject("evidence")
                .put("days", seen.evidence().days())
                .put("weighings", seen.evidence().weighings())
                .put("logged_days", seen.evidence().loggedDays())
                .put("enough", seen.evidence().isEnough())
                .put("measured", seen.isMeasured());
        root.set("equation_kcal", band(seen.prior().band()));
        root.set("burnt_now_kcal", band(seen.now()));
        root.set("holds_weight_kcal", band(seen.holds()));
        root.put("weight_kg", Json.hundredth(seen.weightKg()))
                .put("percent_a_week", Json.hundredth(seen.recent().percentAWeek()));
        decimal(root, "record_short_percent", seen.recordShortPercent());
        ArrayNode days = root.putArray("days");
        seen.trend().forEach(day -> day(days.addObject(), day));
        ArrayNode leftOut = root.putArray("left_out");
        seen.leftOut()
                .forEach(left -> leftOut.addObject()
                        .put("date", left.date().toString())
                        .put("weight_kg", Json.hundredth(left.weightKg()))
                        .put("why", lower(left.why())));
        cautions(root.putArray("cautions"), learned.told());
        return root;
    }

    private static void advice(ObjectNode node, TargetAdvice advice) {
        if (advice instanceof TargetAdvice.Offer offer) {
            node.put("status", "offer")
                    .put("from_kcal", offer.fromKcal())
                    .put("to_kcal", offer.toKcal())
                    .put("holds_kcal", BigDecimal.valueOf(offer.holdsKcal()))
                    .put("second_cut", offer.secondCut());
        } else if (advice instanceof TargetAdvice.Wait wait) {
            node.put("status", "wait").put("reason", lower(wait.reason())).put("text", wait.says());
            wait.until().ifPresentOrElse(day -> node.put("until", day.toString()), () -> node.putNull("until"));
        } else if (advice instanceof TargetAdvice.Stop stop) {
            node.put("status", "stop");
            cautions(node.putArray("cautions"), stop.why());
        }
    }

    private static void cautions(ArrayNode list, List<Caution> cautions) {
        cautions.forEach(caution -> NeedsJson.caution(list.addObject(), caution));
    }

    private static ObjectNode band(KcalBand band) {
        return Json.object()
                .put("min", KcalBand.rounded(band.least()))
                .put("likely", KcalBand.rounded(band.likely()))
                .put("max", KcalBand.rounded(band.most()));
    }

    private static void day(ObjectNode node, TrendDay day) {
        node.put("date", day.date().toString());
        decimal(node, "weighed_kg", day.weighedKg());
        node.put("trend_kg", Json.hundredth(day.trendKg()))
                .put("trend_min_kg", Json.hundredth(day.leastKg()))
                .put("trend_max_kg", Json.hundredth(day.mostKg()))
                .put("planned_kcal", Math.round(day.intake().plannedKcal()))
                .put("unplanned_kcal", Math.round(day.intake().unplannedKcal()))
                .put("logged", day.intake().complete());
        node.set("holds_weight_kcal", band(day.holds()));
    }

    private static void decimal(ObjectNode node, String name, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(name, Json.hundredth(value.getAsDouble()));
        } else {
            node.putNull(name);
        }
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
