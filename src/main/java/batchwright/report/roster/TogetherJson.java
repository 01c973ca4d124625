package batchwright.report.roster;

import batchwright.answer.PlanAnswer;
import batchwright.answer.roster.Client;
import batchwright.answer.roster.RosterAnswer;
import batchwright.answer.roster.TogetherAnswer;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Clients who share one kitchen, schema batchwright.roster/1: a line for each, in the order of the list, whose {@code plan} has their own days
 * and containers and their share of the cost; and last a line with {@code together}: the plan for all, with one shopping, what of the cost
 * is each one's, and who was left out.
 */
public final class TogetherJson {
    /** The field of the last line. */
    public static final String WHOLE = "together";

    /** Fields of a plan for all that hold for each client, too. */
    private static final List<String> OF_ALL = List.of("status", "proof", "currency", "cooking_day", "days");

    private TogetherJson() {}

    public static String lines(TogetherAnswer answer) {
        Map<Long, String> lines = new TreeMap<>();
        for (RosterAnswer other : answer.others()) {
            lines.put(other.clients().get(0).line(), RosterJson.lines(other, Optional.empty()));
        }
        Optional<ObjectNode> whole = answer.answer().map(RosterJson::plan);
        whole.ifPresent(plan -> {
            for (int at = 0; at < answer.clients().size(); at++) {
                Client client = answer.clients().get(at);
                lines.put(client.line(), Json.line(client(answer, plan, at)));
            }
        });
        return String.join("", lines.values())
                + whole.map(plan -> Json.line(whole(answer, plan))).orElse("");
    }

    private static ObjectNode client(TogetherAnswer answer, ObjectNode whole, int at) {
        Client client = answer.clients().get(at);
        ObjectNode line =
                Json.schema(RosterJson.SCHEMA).put("client", client.id()).put("line", client.line());
        ObjectNode plan = line.putObject("plan");
        OF_ALL.forEach(field -> plan.set(field, whole.path(field)));
        Json.money(plan, "cost_minor", answer.shares().stream().skip(at).findFirst());
        JsonNode eater = whole.path("eaters").path(at);
        plan.putArray("eaters").add(eater);
        ArrayNode batches = plan.putArray("batches");
        whole.path("batches")
                .forEach(batch -> batch.path("fills").forEach(fill -> {
                    if (fill.path("eater").equals(eater.path("eater"))) {
                        batches.addObject()
                                .put("dish", batch.path("dish").asText())
                                .put("containers", fill.path("containers").asInt())
                                .putArray("fills")
                                .add(fill);
                    }
                }));
        return line;
    }

    private static ObjectNode whole(TogetherAnswer answer, ObjectNode plan) {
        ObjectNode line = Json.schema(RosterJson.SCHEMA);
        plan.remove("schema");
        plan.remove("eaters");
        plan.path("batches").forEach(batch -> ((ObjectNode) batch).remove("fills"));
        line.set(WHOLE, plan);
        ArrayNode clients = plan.putArray("clients");
        for (int at = 0; at < answer.shares().size(); at++) {
            clients.addObject()
                    .put("client", answer.clients().get(at).id())
                    .put("cost_minor", answer.shares().get(at).minor());
        }
        ArrayNode leftOut = plan.putArray("left_out");
        answer.others().stream()
                .map(other -> other.clients().get(0))
                .sorted(Comparator.comparingLong(Client::line))
                .forEach(
                        client -> leftOut.addObject().put("client", client.id()).put("line", client.line()));
        answer.answer()
                .filter(found -> found.plan().isPresent())
                .map(PlanAnswer::proof)
                .flatMap(TogetherText::over)
                .ifPresent(over -> plan.put("over_bound_percent", over));
        return line;
    }
}
