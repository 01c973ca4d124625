package batchwright.report.needs;

import batchwright.needs.projection.Stage;
import batchwright.needs.projection.Stages;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The target in steps for scripts; part of batchwright.needs/1. */
final class StepsJson {
    private StepsJson() {}

    static ObjectNode of(Stages steps) {
        ObjectNode root = Json.object();
        ArrayNode list = root.putArray("list");
        steps.steps().forEach(step -> step(list.addObject(), step, steps));
        steps.stopped().ifPresentOrElse(why -> root.put("stopped", why), () -> root.putNull("stopped"));
        return root;
    }

    private static void step(ObjectNode node, Stage step, Stages steps) {
        node.put("first_week", step.firstWeek())
                .put("last_week", step.lastWeek())
                .put("intake_kcal", NeedsJson.tenth(step.intake().kcal()))
                .put("weight_kg", Json.hundredth(step.after().weightKg()))
                .put("fat_kg", Json.hundredth(step.after().fatKg()))
                .put("least_allowed", step.limited());
        steps.held()
                .after(step.lastWeek())
                .ifPresentOrElse(
                        body -> node.put("weight_kg_at_first_intake", Json.hundredth(body.weightKg())),
                        () -> node.putNull("weight_kg_at_first_intake"));
    }
}
