package batchwright.report.why;

import batchwright.explain.cost.Frontier;
import batchwright.plan.TradeOff;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** A frontier for scripts. Levels are changes for every eater alike; so is the protein that a cost buys. */
public final class FrontierJson {
    private FrontierJson() {}

    public static void put(ObjectNode node, Frontier frontier) {
        node.put("against", frontier.against().name().toLowerCase(Locale.ROOT));
        ArrayNode points = node.putArray("points");
        frontier.points().forEach(point -> put(points.addObject(), frontier.against(), point));
    }

    private static void put(ObjectNode node, TradeOff against, Frontier.Point point) {
        node.put("in_force", point.inForce());
        switch (against) {
            case PROTEIN -> node.put("protein_change_g", point.change());
            case ENERGY -> node.put("energy_change_kcal", point.change());
            case BUDGET -> node.put("budget_minor", point.cost().least().minor());
        }
        if (against != TradeOff.BUDGET) {
            WhyJson.cost(node, point.cost());
        }
        point.reach()
                .ifPresent(reach ->
                        WhyJson.reach(against == TradeOff.BUDGET ? node : node.putObject("as_cheap_up_to"), reach));
    }
}
