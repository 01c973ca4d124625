package batchwright.report.roster;

import batchwright.answer.PlanAnswer;
import batchwright.answer.roster.Client;
import batchwright.answer.roster.RosterAnswer;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.files.FaultsJson;
import batchwright.report.plan.PlanJson;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * A line for each client, schema batchwright.roster/1: the own id, and either {@code plan}, an object of batchwright.plan/1, or
 * {@code errors} as in batchwright.error/1. Of clients who share pots the first has the plan; the others name it in
 * {@code same_pot_as}. {@code last_weighed} is there when the book knows it. The plan has no {@code proof.seconds}: the same list gives the same lines.
 */
public final class RosterJson {
    static final String SCHEMA = "roster/1";
    /** What each line begins with. */
    public static final String MARK = "{\"schema\":\"batchwright." + SCHEMA + "\"";

    private RosterJson() {}

    /**
     * One line for each client, with their ends.
     *
     * @param page name of the file with the report of these clients, if there is one
     */
    public static String lines(RosterAnswer answer, Optional<String> page) {
        var text = new StringBuilder();
        List<Client> clients = answer.clients();
        Client first = clients.get(0);
        for (Client client : clients) {
            ObjectNode line = Json.schema(SCHEMA);
            Json.text(
                    line,
                    "client",
                    Optional.of(client.id()).filter(id -> client.wrong().isEmpty()));
            line.put("line", client.line());
            if (answer.answer().isEmpty()) {
                ArrayNode errors = line.putArray("errors");
                answer.faults().forEach(fault -> FaultsJson.put(errors.addObject(), fault));
            } else if (client.equals(first)) {
                page.ifPresent(name -> line.put("page", name));
                line.set("plan", plan(answer.answer().get()));
            } else {
                line.put("same_pot_as", first.id());
            }
            Optional.ofNullable(answer.weighed().get(client.id()))
                    .ifPresent(last -> line.putObject("last_weighed")
                            .put("date", last.day().toString())
                            .put("weight_kg", Json.tenth(last.kg()))
                            .put("profile_kg", Json.tenth(last.before())));
            text.append(Json.line(line));
        }
        return text.toString();
    }

    static ObjectNode plan(PlanAnswer answer) {
        ObjectNode plan = PlanJson.object(answer, KitchenClock.FROM_ZERO);
        withoutSeconds(plan);
        plan.path("sessions").forEach(session -> withoutSeconds((ObjectNode) session));
        return plan;
    }

    private static void withoutSeconds(ObjectNode plan) {
        ((ObjectNode) plan.path("proof")).remove("seconds");
    }
}
