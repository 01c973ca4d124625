package batchwright.report.html;

import batchwright.answer.CoreTemperatures;
import batchwright.answer.Freezing;
import batchwright.food.Dish;
import batchwright.food.Part;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.cooking.StepView;
import batchwright.report.cooking.SwapWords;
import batchwright.report.html.part.Series;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One dish of the cooking sheet: what to weigh, what to do, and what goes into each container.
 *
 * @param says how many containers, and how long it keeps
 * @param containers a table for each kind of them
 * @param hot how hot it must get inside
 */
public record DishSheet(
        Series series,
        String name,
        String says,
        Weigh weigh,
        List<Table> containers,
        List<CookingStep> steps,
        Optional<String> hot) {
    /** What is weighed, what is taken to taste, and what fat is poured off. */
    public record Weigh(Table raw, Optional<String> toTaste, List<String> pourOff) {}

    static DishSheet of(PlanPage page, Batch batch) {
        Dish dish = batch.dish();
        return new DishSheet(
                Series.of(page.plan(), dish),
                dish.name(),
                Show.count(batch.containers(), "container", "containers") + ". " + keeps(page, dish) + leftOut(batch)
                        + SwapWords.of(dish).map(says -> " " + says).orElse(""),
                weigh(page, batch),
                batch.fills().stream().map(DishSheet::container).toList(),
                CookingStep.of(page, batch),
                CoreTemperatures.of(batch.ingredients().keySet()).says());
    }

    /** Parts that nobody gets: their steps are dropped. */
    private static String leftOut(Batch batch) {
        List<String> names = batch.leftOut().stream().map(Part::name).toList();
        return names.isEmpty() ? "" : " Not for this plan: " + String.join(", ", names) + ".";
    }

    private static String keeps(PlanPage page, Dish dish) {
        String freeze = Freezing.of(page.plan(), dish).says(page.firstDay());
        return "Keeps " + Show.count(dish.fridgeDays(), "day", "days") + " in the fridge, the cooking day being day 1"
                + (freeze.isEmpty() ? "." : "; " + freeze + ".");
    }

    private static Weigh weigh(PlanPage page, Batch batch) {
        var table = new Table("Weigh, raw and ready to cook")
                .words("food")
                .numbers("g")
                .words("in measures");
        batch.ingredients()
                .forEach((food, grams) -> table.row(
                        food.name(),
                        grams(grams),
                        KitchenMeasure.text(page.answer().kitchen(), food, grams)
                                .orElse("")));
        return new Weigh(
                table,
                batch.dish().staples().isEmpty() ? Optional.empty() : Optional.of(StepView.staples(page.plan(), batch)),
                batch.fatToPourOff().entrySet().stream()
                        .map(fat -> "Pour off about " + grams(fat.getValue()) + " g of fat ("
                                + fat.getKey().name() + "): the figures leave it out.")
                        .toList());
    }

    private static String grams(BigDecimal grams) {
        return grams.compareTo(BigDecimal.TEN) < 0 ? Show.oneDecimal(grams) : Show.whole(grams);
    }

    /** Cooked weights of all containers are sums of what is printed for one. */
    private static Table container(Fill fill) {
        String each = fill.containers() == 1 ? "The container" : "Each of " + fill.containers() + " containers";
        var table = new Table(each + fill.forWhom())
                .words("part")
                .numbers("cooked g")
                .numbers("raw g")
                .numbers("all, cooked g");
        for (Portion portion : fill.portions()) {
            String name = portion.part().name();
            if (portion.rawGrams() == 0) {
                table.row(name, "left out", "–", "–");
            } else {
                String pieces = portion.part().pieces() ? ", " + Show.count(portion.pieces(), "piece", "pieces") : "";
                table.row(
                        name + pieces,
                        Integer.toString(portion.cookedGrams()),
                        Integer.toString(portion.rawGrams()),
                        Integer.toString(portion.cookedGrams() * fill.containers()));
            }
        }
        return table;
    }
}
