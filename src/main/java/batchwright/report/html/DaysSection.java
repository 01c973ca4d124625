package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.needs.Needs;
import batchwright.needs.intakes.Intake;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Optional;

/** Each day of each eater: what is eaten, and how it stands to the target. */
final class DaysSection {
    private final PlanPage page;

    DaysSection(PlanPage page) {
        this.page = page;
    }

    void write(Html html) {
        page.plan().eaters().forEach(eater -> eater(html, eater));
    }

    private void eater(Html html, EaterDays eater) {
        List<EatenDay> days = page.eaten(eater);
        DayTarget target = eater.seat().target();
        html.open("section", "class", "block").open("h3").text("Each day: ");
        html.name(eater.seat().eater().name()).close().line();
        html.open("div", "class", "pair").line();
        energy(html, days, target, eater);
        new MacrosFigure(days, target).write(html);
        html.close().line();
        new DaysTables(days, target).write(html);
        if (page.session() == 0) {
            body(html, eater);
        }
        html.close().line();
    }

    private void body(Html html, EaterDays eater) {
        page.answer().needs().stream()
                .filter(needs -> needs.eater().equals(eater.seat().eater()))
                .forEach(needs -> body(html, needs, page.answer().intakes(needs)));
    }

    /** What days do to the body: nutrients and weight. */
    static void body(Html html, Needs needs, List<Intake> intakes) {
        html.open("div", "class", "pair").line();
        NutrientsFigure.write(html, intakes);
        WeightFigure.write(html, needs);
        html.close().line();
    }

    private void energy(Html html, List<EatenDay> days, DayTarget target, EaterDays eater) {
        Range band = target.day(Nutrient.ENERGY);
        long inside =
                days.stream().filter(d -> band.holds(d.total(Nutrient.ENERGY))).count();
        String says = (inside == days.size() ? "Every day" : inside + " of " + days.size() + " days")
                + " ends inside the band of " + band.says()
                + " kcal.";
        Figure.open(html, "energy", "Energy", says);
        new EnergyChart(days, target).draw(html, says);
        key(html, days, eater);
        html.close().line();
    }

    private void key(Html html, List<EatenDay> days, EaterDays eater) {
        html.open("ul", "class", "key").line();
        page.plan()
                .batches()
                .forEach(batch -> batch.fills().stream()
                        .filter(f -> f.isFor(eater.seat().eater()))
                        .findFirst()
                        .ifPresent(fill -> entry(
                                html,
                                Series.of(page.plan(), batch.dish()),
                                batch.dish().name(),
                                Optional.of(fill))));
        if (eats(days, Series.SNACK)) {
            entry(html, Series.SNACK, "snacks", Optional.empty());
        }
        if (eats(days, Series.ALWAYS)) {
            entry(html, Series.ALWAYS, "what is eaten always", Optional.empty());
        }
        html.close().line();
    }

    private static boolean eats(List<EatenDay> days, Series series) {
        return days.stream()
                .flatMap(d -> d.items().stream())
                .anyMatch(i -> i.series().equals(series));
    }

    private static void entry(Html html, Series series, String name, Optional<Fill> fill) {
        html.open("li").element("b", series.letter(), "class", "swatch " + series.look());
        html.open("span").name(name);
        fill.ifPresent(f -> html.text(" (a container: " + Show.amount(f.perContainer(), Nutrient.ENERGY) + " kcal)"));
        html.close().close().line();
    }
}
