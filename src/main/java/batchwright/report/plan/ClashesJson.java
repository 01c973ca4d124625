package batchwright.report.plan;

import batchwright.plan.Clash;
import batchwright.plan.ClashSet;
import batchwright.plan.Clashes;
import batchwright.report.print.RemedyText;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Why there is no plan, and what would make one possible. */
final class ClashesJson {
    private ClashesJson() {}

    static void put(ObjectNode root, Clashes clashes) {
        ArrayNode array = root.putArray("clashes");
        int number = 0;
        for (ClashSet set : clashes.sets()) {
            number++;
            for (Clash clash : set.rules()) {
                ObjectNode node = array.addObject();
                changed(node, clash);
                node.put("perhaps", clash.isCured() ? "" : remedy(clash))
                        .put("needed", clash.needed())
                        .put("set", number);
                ArrayNode eaters = node.putArray("eaters");
                set.eaters().forEach(eaters::add);
            }
        }
        ArrayNode together = root.putArray("cures_together");
        for (List<Clash> changes : clashes.together()) {
            ArrayNode one = together.addArray();
            changes.forEach(clash -> changed(one.addObject(), clash));
        }
    }

    private static void changed(ObjectNode node, Clash clash) {
        node.put("rule", clash.rule())
                .put("says", clash.says())
                .put("cure", clash.cure())
                .put("try", clash.isCured() ? remedy(clash) : "");
    }

    private static String remedy(Clash clash) {
        return clash.remedy().map(RemedyText::of).orElse("");
    }
}
