package batchwright.report.html;

import batchwright.food.Step;
import batchwright.plan.Batch;
import java.util.ArrayList;
import java.util.List;

/**
 * What to do.
 *
 * @param number as in the dish, so that the order of work can name it; what falls away and the evening before leave a gap
 * @param minutes how long it takes, where, and how much of it is hands on
 */
public record CookingStep(int number, String text, String minutes) {
    static List<CookingStep> of(Batch batch) {
        List<CookingStep> steps = new ArrayList<>();
        List<Step> all = batch.dish().steps();
        for (int i = 0; i < all.size(); i++) {
            Step step = all.get(i);
            if (!step.dayBefore() && batch.takes(step)) {
                steps.add(new CookingStep(i + 1, step.text(), minutes(step)));
            }
        }
        return steps;
    }

    /** 20 min, oven 200 C, hands on. */
    private static String minutes(Step step) {
        String uses = step.appliance()
                .map(a -> switch (a) {
                    case BURNER -> ", burner";
                    case OVEN -> ", oven";
                })
                .orElse("");
        String hot = step.celsius().isPresent() ? " " + step.celsius().getAsInt() + " °C" : "";
        return step.minutes() + " min" + uses + hot + hands(step);
    }

    private static String hands(Step step) {
        String first = step.handsOnMinutes() == 0 ? "" : ", the first " + step.handsOnMinutes() + " hands on";
        return step.handsOn() ? ", hands on" : first;
    }
}
