package batchwright.report.cooking;

import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a step takes in hand, for scripts. */
public final class StepJson {
    private StepJson() {}

    /** {@code food} or {@code staple}, and {@code grams}, which are null for a staple that goes in to taste. */
    public static void amount(ObjectNode node, StepView.Amount amount) {
        node.put(amount.staple() ? "staple" : "food", amount.id());
        amount.grams().ifPresentOrElse(g -> node.put("grams", Json.tenth(g)), () -> node.putNull("grams"));
    }
}
