package batchwright.report;

import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A day's target for scripts. */
final class TargetJson {
    private TargetJson() {}

    static ObjectNode of(DayTarget target) {
        ObjectNode targets = Json.object();
        for (Limit limit : target.limits()) {
            range(targets.putObject(limit.id() + "_" + limit.unit()), limit, target);
        }
        return targets;
    }

    private static void range(ObjectNode node, Limit limit, DayTarget target) {
        Range range = limit.range();
        if (range.hasLeast() || range.isAny()) {
            node.put("min", range.least());
        }
        target.aim(limit).ifPresent(aim -> node.put("aim", aim));
        range.most().ifPresent(most -> node.put("max", most));
    }
}
