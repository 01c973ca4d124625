package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.person.DayTarget;
import batchwright.report.Show;
import java.util.ArrayList;
import java.util.List;

/** What is eaten on each day, thing by thing, with the day's totals below: sums of what is printed. Days that are alike share one. */
final class DaysTables {
    private final List<EatenDay> days;
    private final DayTarget target;

    DaysTables(List<EatenDay> days, DayTarget target) {
        this.days = days;
        this.target = target;
    }

    void write(Html html) {
        html.open("div", "class", "days").line();
        int from = 0;
        for (int i = 1; i <= days.size(); i++) {
            if (i == days.size() || !days.get(i).says().equals(days.get(from).says())) {
                table(days.get(from), days.get(i - 1).day()).write(html);
                from = i;
            }
        }
        html.close().line();
        html.element(
                        "p",
                        "Letters are the dishes above; prot.: protein; carb: carbohydrate, fibre included; f+v: fruit and vegetables. Of prot., fibre and f+v the target is the least."
                                + " Single figures are rounded so that they add up to the total."
                                + (isIncomplete() ? " ≥ means at least: a food has no value for it." : ""),
                        "class",
                        "note")
                .line();
    }

    private boolean isIncomplete() {
        return days.stream()
                .anyMatch(d -> EatenDay.SHOWN.stream().anyMatch(n -> !d.mark(n).isEmpty()));
    }

    private Table table(EatenDay day, int last) {
        String which = day.day() == last ? "Day " + day.day() : "Days " + day.day() + " to " + last;
        var table = new Table(which)
                .words("eat")
                .numbers("kcal")
                .numbers("prot. g")
                .numbers("fat g")
                .numbers("carb g")
                .numbers("fibre g")
                .numbers("f+v g");
        for (int i = 0; i < day.items().size(); i++) {
            List<String> cells = new ArrayList<>(List.of(day.items().get(i).label()));
            for (Nutrient nutrient : EatenDay.SHOWN) {
                cells.add(Integer.toString(day.amount(nutrient, i)));
            }
            table.row(cells.toArray(new String[0]));
        }
        List<String> total = new ArrayList<>(List.of("total"));
        EatenDay.SHOWN.forEach(n -> total.add(day.mark(n) + day.total(n)));
        table.rowLike("total", total.toArray(new String[0]));
        table.rowLike(
                "target",
                "target",
                Integer.toString(target.energyAimKcal()),
                Integer.toString(target.proteinLeastG()),
                target.fatLeastG() + "–" + target.fatMostG(),
                "",
                Integer.toString(target.fibreLeastG()),
                Integer.toString(target.fruitVegLeastG()));
        table.rowLike(
                "target",
                "difference",
                Show.signed(day.total(Nutrient.ENERGY) - target.energyAimKcal()),
                Show.signed(day.total(Nutrient.PROTEIN) - target.proteinLeastG()),
                "",
                "",
                Show.signed(day.total(Nutrient.FIBRE) - target.fibreLeastG()),
                Show.signed(day.total(Nutrient.FRUIT_VEG) - target.fruitVegLeastG()));
        return table;
    }
}
