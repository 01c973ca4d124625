package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.bodyfat.BodyFatEstimate;
import batchwright.quantity.Share;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Body fat for scripts; part of batchwright.needs/1. */
final class BodyFatJson {
    private BodyFatJson() {}

    static void put(ObjectNode root, Needs needs) {
        ObjectNode node = root.putObject("body_fat");
        double kcalPerPoint = needs.restingKcalPerFatPoint();
        Optional<BodyFatEstimate> estimate = needs.bodyFat().estimate();
        if (estimate.isPresent()) {
            estimate(node, estimate.get());
            node.put(
                    "resting_error_kcal",
                    NeedsJson.tenth(kcalPerPoint * estimate.get().errorPoints()));
        } else {
            needs.eater()
                    .body()
                    .bodyFat()
                    .ifPresentOrElse(
                            fat -> told(node, needs, fat),
                            () -> node.putNull("percent")
                                    .putNull("method")
                                    .putNull("measured_by")
                                    .putNull("error_points")
                                    .putNull("resting_error_kcal"));
        }
        node.put("resting_kcal_per_point", NeedsJson.tenth(kcalPerPoint));
        ArrayNode others = node.putArray("second_opinions");
        needs.bodyFat().secondOpinions().forEach(other -> estimate(others.addObject(), other));
    }

    private static void told(ObjectNode node, Needs needs, Share fat) {
        double points = needs.eater().body().fatErrorPoints().orElse(0);
        node.put("percent", Json.hundredth(fat.percent())).put("method", "measured");
        needs.bodyFat().method().ifPresent(method -> node.put("measured_by", method.label()));
        node.put("error_points", Json.hundredth(points))
                .put("resting_error_kcal", NeedsJson.tenth(needs.restingKcalPerFatPoint() * points));
    }

    private static void estimate(ObjectNode node, BodyFatEstimate estimate) {
        node.put("percent", Json.hundredth(estimate.fat().percent()))
                .put("method", estimate.method())
                .put("error_points", Json.hundredth(estimate.errorPoints()))
                .put("source", estimate.source().text());
        ArrayNode caveats = node.putArray("caveats");
        estimate.caveats().forEach(caveats::add);
    }
}
