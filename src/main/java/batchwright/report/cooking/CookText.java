package batchwright.report.cooking;

import batchwright.answer.CoreTemperatures;
import batchwright.answer.Freezing;
import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Session;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import batchwright.schedule.Schedule;
import java.math.BigDecimal;
import java.util.Comparator;

/** What to cook and how to fill the containers. */
public final class CookText {
    /** From this many columns on, what goes in and what comes out stand side by side. */
    private static final int TWO_BLOCKS = 120;

    private static final int BETWEEN = 4;

    private final Session session;
    private final Schedule schedule;
    private final Page page;

    /** @param schedule of the session */
    public CookText(Session session, Schedule schedule, Page page) {
        this.session = session;
        this.schedule = schedule;
        this.page = page;
    }

    public void write() {
        if (session.batches().isEmpty()) {
            return;
        }
        int containers = session.batches().stream().mapToInt(Batch::containers).sum();
        page.heading("COOK: " + Show.count(session.batches().size(), "dish", "dishes") + ", "
                + Show.count(containers, "container", "containers"));
        session.batches().forEach(this::batch);
        minutesNote();
    }

    public void minutesNote() {
        Work.note(session.batches().stream().map(Batch::dish).toList())
                .ifPresent(note -> page.gap().paragraph("  ", "  ", note));
    }

    /** What to begin the evening before, and how long the steps take. */
    public void work(Batch batch) {
        var work = Work.of(schedule, batch);
        work.dayBefore().forEach(step -> page.paragraph("  ", "    ", "The evening before: " + step));
        page.paragraph("  ", "    ", "Takes " + work.says() + ".");
    }

    private void batch(Batch batch) {
        Dish dish = batch.dish();
        page.gap();
        page.paragraph(
                "",
                "  ",
                dish.name() + " (" + dish.id() + "): " + Show.count(batch.containers(), "container", "containers"));
        page.paragraph("  ", "  ", keeps(dish));
        work(batch);
        if (page.width() < TWO_BLOCKS) {
            raw(batch);
            batch.fills().forEach(this::fill);
        } else {
            var left = new CookText(session, schedule, new Page(page.width() / 2));
            left.raw(batch);
            int column = left.page.widest() + BETWEEN;
            var right = new CookText(session, schedule, new Page(page.width() - column));
            batch.fills().forEach(right::fill);
            page.beside(left.page, column, right.page);
        }
    }

    public void raw(Batch batch) {
        page.line("  Raw, for the whole batch (edible weight):");
        var raw = new TextTable("    ").right("g").left("food").left("in measures");
        batch.ingredients()
                .forEach((food, grams) -> raw.row(
                        amount(grams),
                        food.name(),
                        KitchenMeasure.text(session.kitchen(), food, grams).orElse("")));
        page.table(raw);
        SwapWords.of(batch.dish()).ifPresent(says -> page.paragraph("  ", "    ", says));
        if (!batch.dish().staples().isEmpty()) {
            page.paragraph("  ", "    ", StepView.staples(session, batch));
        }
        intoSteps(batch);
        CoreTemperatures.of(batch.ingredients().keySet()).says().ifPresent(says -> page.paragraph("  ", "    ", says));
        batch.fatToPourOff()
                .forEach((part, grams) -> page.paragraph(
                        "  ",
                        "    ",
                        "Pour off about " + amount(grams) + " g of fat (" + part.name()
                                + "): the figures below leave it out."));
    }

    /** What each step takes in hand for the first time, and how it divides the batch; in the order of the dish. */
    private void intoSteps(Batch batch) {
        StepView.all(session, schedule).stream()
                .filter(view ->
                        view.step().dish().equals(batch.dish()) && !view.says().isEmpty())
                .filter(view -> view.step().number().isPresent())
                .sorted(Comparator.comparingInt(view -> view.step().number().getAsInt()))
                .forEach(view -> page.paragraph(
                        "  ", "    ", "Into step " + view.step().number().getAsInt() + ": " + view.says() + "."));
    }

    private String keeps(Dish dish) {
        String freeze = Freezing.of(session, dish).says(session.firstDay());
        return "Keeps " + Show.count(dish.fridgeDays(), "day", "days") + " in the fridge, the cooking day being "
                + (session.firstDay() == 1 ? "day 1" : "the first")
                + (freeze.isEmpty() ? "." : "; " + freeze + ".");
    }

    private static String amount(BigDecimal grams) {
        return grams.compareTo(BigDecimal.TEN) < 0 ? Show.oneDecimal(grams) : Show.whole(grams);
    }

    public void fill(Fill fill) {
        Nutrients holds = fill.perContainer();
        String which = fill.containers() == 1 ? "The container" : "Each of the " + fill.containers() + " containers";
        page.paragraph(
                "  ",
                "    ",
                which + fill.forWhom() + ": " + Show.amount(holds, Nutrient.ENERGY) + " kcal, "
                        + Show.amount(holds, Nutrient.PROTEIN) + " g protein");
        var parts = new TextTable("    ")
                .left("part")
                .right("raw g")
                .right("cooked g")
                .left("");
        for (Portion portion : fill.portions()) {
            if (portion.rawGrams() == 0) {
                parts.row(portion.part().name(), "-", "-", "left out");
            } else {
                parts.row(
                        portion.part().name(),
                        Integer.toString(portion.rawGrams()),
                        Integer.toString(portion.cookedGrams()),
                        portion.part().pieces() ? Show.count(portion.pieces(), "piece", "pieces") : "");
            }
        }
        page.table(parts);
    }
}
