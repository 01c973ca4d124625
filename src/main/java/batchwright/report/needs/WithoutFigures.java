package batchwright.report.needs;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Takes every value out of an answer for scripts and leaves its names: null for a value, an empty list for a list. */
final class WithoutFigures {
    private WithoutFigures() {}

    /** @param kept names whose values stay */
    static void in(ObjectNode node, Set<String> kept) {
        for (Map.Entry<String, JsonNode> field : List.copyOf(node.properties())) {
            if (kept.contains(field.getKey())) {
                continue;
            }
            if (field.getValue() instanceof ObjectNode inner) {
                in(inner, Set.of());
            } else if (field.getValue() instanceof ArrayNode list) {
                list.removeAll();
            } else {
                node.putNull(field.getKey());
            }
        }
    }
}
