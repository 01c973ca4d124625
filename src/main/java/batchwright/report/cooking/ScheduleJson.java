package batchwright.report.cooking;

import batchwright.plan.Session;
import batchwright.report.print.Json;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;

/** The order of work for scripts. Minutes count from the start of the session. */
public final class ScheduleJson {
    private ScheduleJson() {}

    /** Null where there is none. */
    public static void put(ObjectNode root, Optional<Session> session) {
        session.ifPresentOrElse(
                s -> schedule(root.putObject("schedule"), Schedule.of(s.batches())), () -> root.putNull("schedule"));
    }

    private static void schedule(ObjectNode node, Schedule schedule) {
        node.put("minutes", schedule.minutes())
                .put("lower_bound_minutes", schedule.lowerBoundMinutes())
                .put("proven_shortest", schedule.proven())
                .put("hands_on_minutes", schedule.handsOnMinutes())
                .put("burners", schedule.equipment().burners())
                .put("shelves", schedule.equipment().shelves());
        ArrayNode steps = node.putArray("steps");
        schedule.steps().forEach(step -> step(steps.addObject(), step));
        ArrayNode settings = node.putArray("oven_settings");
        schedule.settings()
                .forEach(setting ->
                        settings.addObject().put("minute", setting.minute()).put("celsius", setting.celsius()));
    }

    private static void step(ObjectNode node, PlacedStep step) {
        node.put("start", step.start())
                .put("hands_on_until", step.handsOnUntil())
                .put("end", step.end())
                .put("dish", step.dish().id());
        step.number().ifPresentOrElse(number -> node.put("step", number), () -> node.putNull("step"));
        node.put("do", step.text());
        Json.text(node, "on", step.on().map(a -> a.name().toLowerCase(Locale.ROOT)));
        step.celsius().ifPresentOrElse(c -> node.put("celsius", c), () -> node.putNull("celsius"));
        step.places().forEach(node.putArray("places")::add);
    }
}
