package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.goal.AdviceBand;
import batchwright.needs.goal.EnergyPerKg;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.Held;
import batchwright.needs.goal.KcalPerKg;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Goal;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** A goal for scripts; part of batchwright.needs/1. Gain is positive, loss negative; percentages of a band have no sign. */
final class GoalJson {
    private GoalJson() {}

    static void put(ObjectNode root, Needs needs) {
        ObjectNode node = root.putObject("goal");
        if (needs.stopsPlanning()) {
            node.putNull("kcal_per_day");
        } else {
            node.put("kcal_per_day", NeedsJson.tenth(needs.goalKcal()));
        }
        node.put("says", needs.goalSays());
        needs.goal().ifPresent(goal -> finding(node, goal));
    }

    private static void finding(ObjectNode node, GoalFinding goal) {
        node.put("kg_per_week", Json.hundredth(goal.change().kgAWeek()))
                .put("percent_per_week", Json.hundredth(goal.change().percentAWeek()));
        goal.reach()
                .ifPresent(reach -> reach(node, reach)
                        .put(
                                "kg_per_week_on_average",
                                Json.hundredth(goal.byRule().kgAWeek())));
        rule(node.putObject("by_rule_of_7700"), goal.byRule());
        goal.held().ifPresentOrElse(held -> held(node.putObject("held"), held), () -> node.putNull("held"));
        goal.holdsAfterwards().ifPresent(energy -> node.put("holds_afterwards_kcal", NeedsJson.tenth(energy.kcal())));
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

    private static ObjectNode reach(ObjectNode node, Goal.ReachWeight reach) {
        return node.put("weight_kg", Json.hundredth(reach.weight().kg()))
                .put("from", reach.from().toString())
                .put("by", reach.by().toString())
                .put("weeks", Json.hundredth(reach.weeks()));
    }

    private static void rule(ObjectNode node, WeeklyChange change) {
        node.put("kcal_per_day", NeedsJson.tenth(change.kcalADay()))
                .put("kg_per_week", Json.hundredth(change.kgAWeek()));
    }

    /** Weights when the intake is never changed; null where that would lead too low. */
    private static void held(ObjectNode node, Held held) {
        node.put("intake_kcal", NeedsJson.tenth(held.intake().kcal()));
        Held.WEEKS.forEach(
                week -> weight(node, "kg_after_" + week + "_weeks", held.year().after(week)));
        weight(node, "kg_in_the_end", held.settled());
    }

    private static void weight(ObjectNode node, String name, Optional<BodyState> body) {
        body.ifPresentOrElse(state -> node.put(name, Json.hundredth(state.weightKg())), () -> node.putNull(name));
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
