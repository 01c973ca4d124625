package batchwright.report.needs;

import batchwright.person.CommonMultiplier;
import batchwright.person.Compendium2011;
import batchwright.person.FaoLevel;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a profile may say of activity, for scripts: schema batchwright.activities/1. */
public final class ActivitiesJson {
    private ActivitiesJson() {}

    public static String list() {
        ObjectNode root = Json.schema("activities/1");
        ArrayNode levels = root.putArray("levels");
        for (FaoLevel level : FaoLevel.values()) {
            levels.addObject()
                    .put("says", level.label())
                    .put("pal", Json.thousandth(level.pal()))
                    .put("pal_least", Json.hundredth(level.leastPal()))
                    .put("pal_most", Json.hundredth(level.mostPal()));
        }
        ArrayNode multipliers = root.putArray("multipliers");
        for (CommonMultiplier multiplier : CommonMultiplier.values()) {
            multipliers
                    .addObject()
                    .put("says", multiplier.label())
                    .put("pal", Json.thousandth(multiplier.pal()))
                    .put("meaning", multiplier.meaning());
        }
        ArrayNode activities = root.putArray("activities");
        Compendium2011.activities().values().forEach(activity -> ActivityJson.listed(activities.addObject(), activity));
        return Json.text(root);
    }
}
