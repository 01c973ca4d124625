package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.total.PalEvidence;
import batchwright.person.ActivityFacts;
import batchwright.person.Diary;
import batchwright.person.ListedActivity;
import batchwright.person.PhysicalActivity;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How active an eater is, for scripts. */
final class ActivityJson {
    private ActivityJson() {}

    static void put(ObjectNode root, Needs needs) {
        PhysicalActivity activity = needs.eater().activity();
        PalEvidence evidence = needs.palEvidence();
        root.put("pal", Json.thousandth(activity.pal()));
        ObjectNode node = root.putObject("activity")
                .put("says", activity.label())
                .put("pal", Json.thousandth(activity.pal()))
                .put("pal_least", Json.hundredth(evidence.leastPal()))
                .put("pal_most", Json.hundredth(evidence.mostPal()))
                .put("source", evidence.source().text());
        ArrayNode caveats = node.putArray("caveats");
        evidence.caveats().forEach(caveats::add);
        if (activity instanceof ActivityFacts facts) {
            ArrayNode training = node.put("day", facts.day().label())
                    .put("steps", facts.stepsADay())
                    .putArray("training");
            facts.training()
                    .forEach(entry ->
                            listed(training.addObject(), entry.activity()).put("minutes_a_week", entry.minutes()));
        }
        ArrayNode entries = node.putArray("diary");
        if (activity instanceof Diary diary) {
            diary.entries()
                    .forEach(entry ->
                            listed(entries.addObject(), entry.activity()).put("minutes", entry.minutes()));
        }
    }

    static ObjectNode listed(ObjectNode node, ListedActivity activity) {
        return node.put("activity", activity.id())
                .put("code", activity.code())
                .put("met", activity.met())
                .put("name", activity.name());
    }
}
