package batchwright.report;

import batchwright.needs.Needs;
import batchwright.needs.goal.AdviceBand;
import batchwright.needs.goal.EnergyPerKg;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.KcalPerKg;
import batchwright.person.Goal;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A goal for scripts; part of batchwright.needs/1. Gain is positive, loss negative; percentages of a band have no sign. */
final class GoalJson {
    private GoalJson() {}

    static void put(ObjectNode root, Needs needs) {
        ObjectNode node = root.putObject("goal")
                .put("kcal_per_day", NeedsJson.tenth(needs.goalKcal()))
                .put("says", needs.goalSays());
        needs.goal().ifPresent(goal -> finding(node, goal));
    }

    private static void finding(ObjectNode node, GoalFinding goal) {
        node.put("kg_per_week", Json.hundredth(goal.change().kgAWeek()))
                .put("percent_per_week", Json.hundredth(goal.change().percentAWeek()));
        goal.reach().ifPresent(reach -> reach(node, reach));
        ObjectNode perKg = node.putObject("kcal_per_kg").put("rule", NeedsJson.tenth(EnergyPerKg.RULE_KCAL));
        goal.perKg()
                .ifPresentOrElse(
                        found -> composition(perKg.putObject("by_composition"), found),
                        () -> perKg.putNull("by_composition"));
        goal.band().ifPresentOrElse(band -> band(node.putObject("advised"), band, goal), () -> node.putNull("advised"));
        ArrayNode notes = node.putArray("notes");
        goal.notes()
                .forEach(note -> notes.addObject()
                        .put("says", note.says())
                        .put("source", note.source().text()));
    }

    private static void reach(ObjectNode node, Goal.ReachWeight reach) {
        node.put("weight_kg", Json.hundredth(reach.weight().kg()))
                .put("from", reach.from().toString())
                .put("by", reach.by().toString())
                .put("weeks", Json.hundredth(reach.weeks()));
    }

    private static void composition(ObjectNode node, KcalPerKg found) {
        node.put("likely", NeedsJson.tenth(found.kcal()))
                .put("min", NeedsJson.tenth(found.least()))
                .put("max", NeedsJson.tenth(found.most()));
    }

    private static void band(ObjectNode node, AdviceBand band, GoalFinding goal) {
        node.put("min_percent_per_week", Json.hundredth(band.leastPercent()))
                .put("max_percent_per_week", Json.hundredth(band.mostPercent()))
                .put("inside", !band.isExceededBy(goal.change(), goal.total()) && !band.isNotReachedBy(goal.change()))
                .put("source", band.source().text());
    }
}
