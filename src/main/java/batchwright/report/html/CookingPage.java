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
import batchwright.report.cooking.Work;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/** The cooking sheet: the evening before, then each dish with what to weigh, what to do, and what goes into each container. */
final class CookingPage {
    private final PlanPage page;

    CookingPage(PlanPage page) {
        this.page = page;
    }

    void write(Html html) {
        page.open(
                html,
                "cook",
                "Cooking sheet",
                Show.count(page.plan().batches().size(), "dish", "dishes") + ", "
                        + Show.count(page.containers(), "container", "containers") + ".");
        evening(html);
        new TimeLine(page.plan(), page.schedule(), page.style().clock()).write(html);
        page.plan().batches().forEach(batch -> dish(html, batch));
        Work.note(page.plan().batches().stream().map(Batch::dish).toList())
                .ifPresent(note -> html.element("p", note, "class", "note"));
        html.element(
                "p",
                "Cool in shallow containers and have all of it in the fridge within 2 hours. Local food-safety advice goes"
                        + " first; the cautions of the plan tell more.",
                "class",
                "note");
        html.close().line();
    }

    private void evening(Html html) {
        List<Batch> early = page.plan().batches().stream()
                .filter(b -> !Work.dayBefore(b).isEmpty())
                .toList();
        if (early.isEmpty()) {
            return;
        }
        html.open("div", "class", "evening")
                .element("h3", "The evening before")
                .open("ul", "class", "ticks")
                .line();
        early.forEach(batch -> Work.dayBefore(batch).forEach(step -> {
            html.open("li").open("label").empty("input", "type", "checkbox");
            html.open("span", "class", "what")
                    .text(step + " ")
                    .open("em")
                    .name(batch.dish().name());
            html.close().close().close().close().line();
        }));
        html.close().close().line();
    }

    private void dish(Html html, Batch batch) {
        Dish dish = batch.dish();
        html.open("section", "class", "dish").open("h3");
        html.element(
                "b",
                Series.of(page.plan(), dish).letter(),
                "class",
                "swatch " + Series.of(page.plan(), dish).look());
        html.text(" ").name(dish.name()).close().line();
        html.element(
                        "p",
                        Show.count(batch.containers(), "container", "containers") + ". " + keeps(dish) + leftOut(batch))
                .line();
        html.open("div", "class", "pair").line();
        html.open("div").line();
        raw(html, batch);
        batch.fills().forEach(fill -> portion(fill).write(html));
        html.close().line();
        steps(html, batch);
        html.close().close().line();
    }

    /** Parts that nobody gets: their steps fall away. */
    private static String leftOut(Batch batch) {
        List<String> names = batch.leftOut().stream().map(Part::name).toList();
        return names.isEmpty() ? "" : " Not for this plan: " + String.join(", ", names) + ".";
    }

    private String keeps(Dish dish) {
        String freeze = Freezing.of(page.plan(), dish).says(page.firstDay());
        return "Keeps " + Show.count(dish.fridgeDays(), "day", "days") + " in the fridge, the cooking day being day 1"
                + (freeze.isEmpty() ? "." : "; " + freeze + ".");
    }

    private void raw(Html html, Batch batch) {
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
        table.write(html);
        if (!batch.dish().staples().isEmpty()) {
            html.element("p", StepView.staples(batch), "class", "note");
        }
        batch.fatToPourOff()
                .forEach((part, grams) -> html.element(
                        "p",
                        "Pour off about " + grams(grams) + " g of fat (" + part.name()
                                + "): the figures leave it out."));
    }

    private static String grams(BigDecimal grams) {
        return grams.compareTo(BigDecimal.TEN) < 0 ? Show.oneDecimal(grams) : Show.whole(grams);
    }

    /** Numbered as in the dish, so that the order of work can name them; what falls away and the evening before leave a gap. */
    private void steps(Html html, Batch batch) {
        html.open("div").element("h4", "Do").open("ol", "class", "steps").line();
        views(batch).forEach(view -> {
            int number = view.step().number().orElseThrow();
            html.open("li", "value", Integer.toString(number)).text(view.step().text() + " ");
            String says = view.says();
            if (!says.isEmpty()) {
                html.element("small", Show.capital(says) + ".", "class", "with").text(" ");
            }
            html.element("small", minutes(view)).close().line();
        });
        html.close().line();
        CoreTemperatures.of(batch.ingredients().keySet())
                .says()
                .ifPresent(says -> html.element("p", says, "class", "hot"));
        html.close().line();
    }

    /** The dish's own steps that are done, in its order. */
    private List<StepView> views(Batch batch) {
        return StepView.all(page.plan().batches(), page.schedule()).stream()
                .filter(view -> view.step().dish().equals(batch.dish()))
                .filter(view -> view.step().number().isPresent())
                .sorted(Comparator.comparingInt(view -> view.step().number().getAsInt()))
                .toList();
    }

    /** 10:20, 20 min, oven, hands on, 200 °C. */
    private String minutes(StepView view) {
        String hot =
                view.step().celsius().isPresent() ? ", " + view.step().celsius().getAsInt() + " °C" : "";
        return page.style().clock().text(view.step().start()) + ", " + view.minutes() + hot;
    }

    /** Cooked weights of all containers are sums of what is printed for one. */
    private static Table portion(Fill fill) {
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
