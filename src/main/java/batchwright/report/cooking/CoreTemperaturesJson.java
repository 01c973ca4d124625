package batchwright.report.cooking;

import batchwright.answer.CoreTemperatures;
import batchwright.food.CoreTemperature;
import com.fasterxml.jackson.databind.node.ArrayNode;

/** How hot raw meat, fish and egg must get inside, for scripts. */
public final class CoreTemperaturesJson {
    private CoreTemperaturesJson() {}

    public static void put(ArrayNode node, CoreTemperatures temperatures) {
        temperatures.foods().forEach((least, those) -> {
            var entry = node.addObject();
            ArrayNode names = entry.putArray("foods");
            those.forEach(food -> names.add(food.id()));
            entry.put("celsius", least.celsius())
                    .put("fahrenheit", least.fahrenheit())
                    .put("rest_minutes", least.restMinutes())
                    .put("source", CoreTemperature.SOURCE);
        });
    }
}
