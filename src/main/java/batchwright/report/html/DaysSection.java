package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.plan.EaterDays;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.KeyEntry;
import batchwright.report.html.part.Series;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Each day of an eater: what is eaten, and how it stands to the target.
 *
 * @param key of the picture of energy
 * @param tables one for days that are alike
 * @param body left out when more days follow than these
 */
public record DaysSection(
        String eater,
        Figure energy,
        List<KeyEntry> key,
        Figure macros,
        List<Table> tables,
        String note,
        Optional<BodyFigures> body) {
    static DaysSection of(PlanPage page, EaterDays eater) {
        List<EatenDay> days = page.eaten(eater);
        DayTarget target = eater.seat().target();
        var tables = new DaysTables(days, target);
        return new DaysSection(
                eater.seat().eater().name(),
                energy(days, target, EnergyChart.scale(page)),
                key(page, days, eater),
                MacrosFigure.of(days, target),
                tables.all(),
                tables.note(),
                page.session() == 0 ? body(page, eater) : Optional.empty());
    }

    private static Optional<BodyFigures> body(PlanPage page, EaterDays eater) {
        return page.answer().needs().stream()
                .filter(needs -> needs.eater().equals(eater.seat().eater()))
                .findFirst()
                .map(needs -> BodyFigures.of(needs, page.answer().intakes(needs)));
    }

    private static Figure energy(List<EatenDay> days, DayTarget target, int scale) {
        Range band = target.day(Nutrient.ENERGY);
        long inside =
                days.stream().filter(d -> band.holds(d.total(Nutrient.ENERGY))).count();
        String says = (inside == days.size() ? "Every day" : inside + " of " + days.size() + " days")
                + " ends inside the band of " + band.says()
                + " kcal.";
        return new Figure(
                "energy",
                "Energy",
                says,
                Optional.of(new EnergyChart(days, target, scale).draw(says)),
                Optional.empty());
    }

    private static List<KeyEntry> key(PlanPage page, List<EatenDay> days, EaterDays eater) {
        List<KeyEntry> key = new ArrayList<>();
        page.plan()
                .batches()
                .forEach(batch -> batch.fills().stream()
                        .filter(f -> f.isFor(eater.seat().eater()))
                        .findFirst()
                        .ifPresent(fill -> key.add(new KeyEntry(
                                Series.of(page.plan(), batch.dish()),
                                batch.dish().name(),
                                " (a container: " + Show.amount(fill.perContainer(), Nutrient.ENERGY) + " kcal)"))));
        if (eats(days, Series.SNACK)) {
            key.add(new KeyEntry(Series.SNACK, "snacks", ""));
        }
        if (eats(days, Series.ALWAYS)) {
            key.add(new KeyEntry(Series.ALWAYS, "what is eaten always", ""));
        }
        return key;
    }

    private static boolean eats(List<EatenDay> days, Series series) {
        return days.stream()
                .flatMap(d -> d.items().stream())
                .anyMatch(i -> i.series().equals(series));
    }
}
