package batchwright.report.plan;

import batchwright.needs.Needs;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.needs.IntakesJson;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * Several cooking sessions for scripts: schema batchwright.plan/1. Above stands the whole: days are counted through, and each day, batch
 * and line of shopping has the number of its session. {@code sessions} holds each session in the form of a plan of its own, whose days
 * are counted from its cooking day.
 */
public final class SessionsJson {
    private static final List<String> JOINED = List.of("batches", "shopping", "use_up");
    private final SessionsAnswer answer;
    private final KitchenClock clock;
    private final ObjectNode root;

    private SessionsJson(SessionsAnswer answer, KitchenClock clock) {
        this.answer = answer;
        this.clock = clock;
        this.root = PlanJson.object(answer.whole(), clock);
    }

    public static String of(SessionsAnswer answer, KitchenClock clock) {
        return new SessionsJson(answer, clock).text();
    }

    private String text() {
        root.put("cooks", answer.cooks());
        root.put("shop", answer.shopOnce() ? "once" : "each");
        ArrayNode sessions = root.putArray("sessions");
        if (!answer.sessions().isEmpty()) {
            Json.money(root, "cost_minor", Optional.of(answer.cost()));
            ((ObjectNode) root.get("proof")).put("cost_minor", answer.cost().minor());
            JOINED.forEach(root::putArray);
            for (int s = 0; s < answer.sessions().size(); s++) {
                SessionsAnswer.One one = answer.sessions().get(s);
                ObjectNode plan = PlanJson.object(one.answer(), clock);
                join(s + 1, one.firstDay(), plan);
                ObjectNode session = sessions.addObject()
                        .put("session", s + 1)
                        .put("first_day", one.firstDay())
                        .put("last_day", one.lastDay());
                session.setAll(plan);
            }
            nutrients();
            answer.audit().ifPresent(audit -> PlanJson.audit(root, audit));
            ArrayNode cautions = root.putArray("cautions");
            answer.notices().forEach(notice -> PlanJson.notice(cautions.addObject(), notice));
        }
        return Json.text(root);
    }

    private void join(int session, int firstDay, ObjectNode plan) {
        for (String list : JOINED) {
            plan.get(list).forEach(entry -> array(list).add(numbered(entry, session)));
        }
        for (int e = 0; e < root.get("eaters").size(); e++) {
            ArrayNode days = (ArrayNode) root.get("eaters").get(e).get("days");
            for (JsonNode day : plan.get("eaters").get(e).get("days")) {
                ObjectNode mine = numbered(day, session);
                days.add(mine.put("day", day.get("day").intValue() + firstDay - 1));
            }
        }
    }

    private ArrayNode array(String name) {
        return (ArrayNode) root.get(name);
    }

    private static ObjectNode numbered(JsonNode entry, int session) {
        ObjectNode copy = entry.deepCopy();
        return copy.put("session", session);
    }

    private void nutrients() {
        for (int e = 0; e < answer.whole().needs().size(); e++) {
            Needs needs = answer.whole().needs().get(e);
            ArrayNode nutrients = ((ObjectNode) root.get("eaters").get(e)).putArray("nutrients");
            answer.intakes(needs).forEach(intake -> IntakesJson.put(nutrients.addObject(), intake));
        }
    }
}
