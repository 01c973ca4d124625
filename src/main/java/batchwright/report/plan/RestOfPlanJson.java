package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.answer.RestOfPlan;
import batchwright.plan.left.LeftDish;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The same in the JSON of a plan: {@code rest}, {@code left_besides} and {@code past_last_day}. */
public final class RestOfPlanJson {
    private RestOfPlanJson() {}

    public static String of(RestOfPlan rest, PlanAnswer answer, KitchenClock clock) {
        ObjectNode root = PlanJson.object(answer, clock);
        RestOfPlan.Stretch stretch = rest.stretch();
        ObjectNode node = root.putObject("rest")
                .put("plan_of", stretch.planOf().toString())
                .put("keeps_containers", stretch.keeps());
        answer.plan()
                .map(rest::changes)
                .ifPresent(changes ->
                        node.put("changed_days", changes.days()).put("changed_containers", changes.containers()));
        ArrayNode left = node.putArray("left");
        rest.left().dishes().stream()
                .filter(LeftDish::isEaten)
                .forEach(dish -> left.addObject()
                        .put("dish", dish.origin())
                        .put("eater", dish.eater())
                        .put("count", dish.containers()));
        ArrayNode given = node.putArray("given");
        answer.plan()
                .map(rest::given)
                .orElse(List.of())
                .forEach(to -> given.addObject()
                        .put("dish", to.dish())
                        .put("of", to.of())
                        .put("eater", to.to())
                        .put("count", to.count()));
        ArrayNode guests = node.putArray("guests");
        rest.guests()
                .forEach(guest -> guests.addObject()
                        .put("date", guest.day().toString())
                        .put("dish", guest.boxes().dish())
                        .put("of", guest.boxes().eater()));
        EatenFirstJson.boxes(root.putArray("left_besides"), rest.over(answer.plan()));
        EatenFirstJson.boxes(root.putArray("past_last_day"), rest.past());
        return Json.text(root);
    }
}
