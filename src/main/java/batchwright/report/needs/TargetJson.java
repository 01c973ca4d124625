package batchwright.report.needs;

import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;

/** A day's target for scripts. */
public final class TargetJson {
    private TargetJson() {}

    /** Written into a field of its own, and every limit with its reason into a list; null and empty without a target. */
    public static void put(ObjectNode node, Optional<DayTarget> target) {
        target.ifPresentOrElse(t -> node.set("targets", of(t)), () -> node.putNull("targets"));
        ArrayNode limits = node.putArray("limits");
        target.ifPresent(t -> t.limits().forEach(limit -> limit(limits.addObject(), limit)));
    }

    private static void limit(ObjectNode node, Limit limit) {
        node.put("id", limit.id()).put("rule", limit.name());
        node.put("scope", limit.scope().name().toLowerCase(Locale.ROOT));
        node.put("measured", limit.measured().id()).put("unit", limit.unit());
        ends(node, limit.range());
        node.put("says", limit.reason().says()).put("source", limit.reason().source());
        limit.setting().ifPresentOrElse(s -> node.put("profile_key", s.key()), () -> node.putNull("profile_key"));
    }

    private static ObjectNode of(DayTarget target) {
        ObjectNode targets = Json.object();
        for (Limit limit : target.limits()) {
            range(targets.putObject(limit.id() + "_" + limit.measured().unit()), limit, target);
        }
        return targets;
    }

    private static void range(ObjectNode node, Limit limit, DayTarget target) {
        if (limit.range().hasLeast() || limit.range().isAny()) {
            node.put("min", limit.range().least());
        }
        target.aim(limit).ifPresent(aim -> node.put("aim", aim));
        limit.range().most().ifPresent(most -> node.put("max", most));
    }

    private static void ends(ObjectNode node, Range range) {
        if (range.hasLeast() || range.isAny()) {
            node.put("min", range.least());
        }
        range.most().ifPresent(most -> node.put("max", most));
    }
}
