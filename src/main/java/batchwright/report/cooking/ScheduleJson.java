package batchwright.report.cooking;

import batchwright.food.Appliance;
import batchwright.plan.Session;
import batchwright.report.print.Json;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import batchwright.schedule.StandsTooLong;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.OptionalInt;

/** The order of work for scripts. Minutes count from the start of the session. */
public final class ScheduleJson {
    private ScheduleJson() {}

    /** Null where there is none. */
    public static void put(
            ObjectNode root, Optional<Session> session, Optional<Schedule> schedule, KitchenClock clock) {
        session.ifPresentOrElse(
                s -> schedule(root.putObject("schedule"), s, schedule.orElseThrow(), clock),
                () -> root.putNull("schedule"));
    }

    private static void schedule(ObjectNode node, Session session, Schedule schedule, KitchenClock clock) {
        node.put("minutes", schedule.minutes())
                .put("lower_bound_minutes", schedule.lowerBoundMinutes())
                .put("proven_shortest", schedule.proven())
                .put("hands_on_minutes", schedule.handsOnMinutes())
                .put("cooks", schedule.equipment().cooks())
                .put("burners", schedule.equipment().hob().burners())
                .put("shelves", schedule.equipment().oven().shelves());
        OptionalInt most = schedule.equipment().limits().handsOnMinutes();
        most.ifPresentOrElse(m -> node.put("most_hands_on_minutes", m), () -> node.putNull("most_hands_on_minutes"));
        schedule.equipment()
                .limits()
                .doneWithinMinutes()
                .ifPresentOrElse(m -> node.put("done_within_minutes", m), () -> node.putNull("done_within_minutes"));
        Json.text(node, "cook_at", clock.start().map(at -> clock.text(0)));
        ArrayNode steps = node.putArray("steps");
        StepView.all(session, schedule).forEach(view -> step(steps.addObject(), view));
        ArrayNode settings = node.putArray("oven_settings");
        schedule.settings()
                .forEach(setting ->
                        settings.addObject().put("minute", setting.minute()).put("celsius", setting.celsius()));
        ArrayNode standing = node.putArray("stands_too_long");
        schedule.standing().forEach(stands -> standing(standing.addObject(), stands));
    }

    private static void standing(ObjectNode node, StandsTooLong stands) {
        node.put("dish", stands.dish().id())
                .put("step", stands.step())
                .put("minutes", stands.minutes())
                .put("most_minutes", stands.most());
    }

    private static void step(ObjectNode node, StepView view) {
        PlacedStep step = view.step();
        node.put("start", step.start())
                .put("hands_on_until", step.handsOnUntil())
                .put("end", step.end())
                .put("dish", step.dish().id());
        step.number().ifPresentOrElse(number -> node.put("step", number), () -> node.putNull("step"));
        node.put("do", step.text());
        Json.text(node, "on", step.on().map(Appliance::id));
        step.celsius().ifPresentOrElse(c -> node.put("celsius", c), () -> node.putNull("celsius"));
        step.places().forEach(node.putArray("places")::add);
        ArrayNode with = node.putArray("with");
        view.amounts().forEach(amount -> StepJson.amount(with.addObject(), amount));
        step.task()
                .work()
                .loads()
                .ifPresentOrElse(
                        loads -> node.putObject("loads")
                                .put("vessel", loads.vessel())
                                .put("number", loads.number())
                                .put("at_once", loads.atOnce())
                                .put("grams_each", loads.gramsEach()),
                        () -> node.putNull("loads"));
    }
}
