package batchwright.report.plan;

import batchwright.book.KeptWork;
import batchwright.book.KeptWork.KeptStep;
import batchwright.book.KeptWork.Loads;
import batchwright.book.KeptWork.Minutes;
import batchwright.book.KeptWork.Taken;
import batchwright.book.KeptWork.Where;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the order of work of a plan that was kept: of each of its sessions, or of the only one. */
final class KeptWorkJson {
    private KeptWorkJson() {}

    static List<KeptWork> read(JsonNode root) {
        var work = new ArrayList<KeptWork>();
        work(root, 1).ifPresent(work::add);
        for (JsonNode session : root.path("sessions")) {
            work(session, session.path("first_day").asInt()).ifPresent(work::add);
        }
        return work;
    }

    private static Optional<KeptWork> work(JsonNode plan, int day) {
        JsonNode schedule = plan.path("schedule");
        if (!schedule.isObject()) {
            return Optional.empty();
        }
        var steps = new ArrayList<KeptStep>();
        schedule.path("steps").forEach(step -> steps.add(step(step)));
        return Optional.of(new KeptWork(day, schedule.path("minutes").asInt(), steps));
    }

    private static KeptStep step(JsonNode step) {
        var places = new ArrayList<Integer>();
        step.path("places").forEach(place -> places.add(place.asInt()));
        var with = new ArrayList<Taken>();
        step.path("with").forEach(taken -> with.add(taken(taken)));
        JsonNode loads = step.path("loads");
        return new KeptStep(
                new Minutes(
                        step.path("start").asInt(),
                        step.path("hands_on_until").asInt(),
                        step.path("end").asInt()),
                step.path("dish").asText(),
                whole(step.path("step")),
                step.path("do").asText(),
                new Where(Optional.ofNullable(step.path("on").textValue()), places, whole(step.path("celsius"))),
                with,
                loads.isObject()
                        ? Optional.of(new Loads(
                                loads.path("vessel").asText(),
                                loads.path("number").asInt(),
                                loads.path("at_once").asInt(),
                                loads.path("grams_each").asInt()))
                        : Optional.empty());
    }

    private static Taken taken(JsonNode node) {
        JsonNode grams = node.path("grams");
        return new Taken(
                node.path("staple").asText(node.path("food").asText()),
                grams.isNumber() ? Optional.of(grams.decimalValue()) : Optional.empty());
    }

    private static OptionalInt whole(JsonNode number) {
        return number.isIntegralNumber() ? OptionalInt.of(number.asInt()) : OptionalInt.empty();
    }
}
