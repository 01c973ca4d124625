package batchwright.report.html;

import batchwright.plan.Batch;
import batchwright.report.cooking.StepView;
import batchwright.report.print.Show;
import java.util.Comparator;
import java.util.List;

/**
 * What to do.
 *
 * @param number as in the dish, so that the order of work can name it; what falls away and the evening before leave a gap
 * @param with what is taken in hand, and how the batch is divided; may be empty
 * @param minutes when, how long, where, and how much of it is hands on
 */
public record CookingStep(int number, String text, String with, String minutes) {
    /** The dish's own steps that are done, in its order. */
    static List<CookingStep> of(PlanPage page, Batch batch) {
        return StepView.all(page.plan(), page.schedule()).stream()
                .filter(view -> view.step().dish().equals(batch.dish()))
                .filter(view -> view.step().number().isPresent())
                .sorted(Comparator.comparingInt(view -> view.step().number().getAsInt()))
                .map(view -> of(page, view))
                .toList();
    }

    private static CookingStep of(PlanPage page, StepView view) {
        String says = view.says();
        return new CookingStep(
                view.step().number().getAsInt(),
                view.step().text(),
                says.isEmpty() ? "" : Show.capital(says) + ".",
                minutes(page, view));
    }

    /** 10:20, 20 min, oven, hands on, 200 °C. */
    private static String minutes(PlanPage page, StepView view) {
        String hot =
                view.step().celsius().isPresent() ? ", " + view.step().celsius().getAsInt() + " °C" : "";
        return page.style().clock().text(view.step().start()) + ", " + view.minutes() + hot;
    }
}
