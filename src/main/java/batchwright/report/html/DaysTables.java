package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** What is eaten on each day, thing by thing, with the day's totals below: sums of what is printed. Days that are alike share one. */
final class DaysTables {
    private final List<EatenDay> days;
    private final DayTarget target;

    DaysTables(List<EatenDay> days, DayTarget target) {
        this.days = days;
        this.target = target;
    }

    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= days.size(); i++) {
            if (i == days.size() || !days.get(i).says().equals(days.get(from).says())) {
                tables.add(table(days.get(from), days.get(i - 1).day()));
                from = i;
            }
        }
        return tables;
    }

    /** What letters, heads and signs mean. */
    String note() {
        return "Letters are the dishes above; prot.: protein; carb: carbohydrate, fibre included; f+v: fruit and vegetables. "
                + floors()
                + " Single figures are rounded so that they add up to the total."
                + (isIncomplete() ? " ≥ means at least: a food has no value for it." : "");
    }

    /** The figures of which the target is the least. */
    private String floors() {
        List<String> floors = target.limits(Scope.DAY).stream()
                .filter(limit -> limit.range().most().isEmpty())
                .map(limit -> shortly(limit.measured()))
                .toList();
        int last = floors.size() - 1;
        return switch (floors.size()) {
            case 0 -> "";
            case 1 -> "Of " + floors.get(0) + " the target is the least.";
            default ->
                "Of " + String.join(", ", floors.subList(0, last)) + " and " + floors.get(last)
                        + " the target is the least.";
        };
    }

    private static String shortly(Nutrient nutrient) {
        return switch (nutrient) {
            case PROTEIN -> "prot.";
            case CARBOHYDRATE -> "carb";
            case FRUIT_VEG -> "f+v";
            default -> nutrient.label();
        };
    }

    private List<Nutrient> shown() {
        return EatenDay.shown(target);
    }

    private boolean isIncomplete() {
        return days.stream()
                .anyMatch(d -> shown().stream().anyMatch(n -> !d.mark(n).isEmpty()));
    }

    private Table table(EatenDay day, int last) {
        String which = day.day() == last ? "Day " + day.day() : "Days " + day.day() + " to " + last;
        var table = new Table(which).words("eat");
        for (Nutrient nutrient : shown()) {
            table.numbers(nutrient == Nutrient.ENERGY ? nutrient.unit() : shortly(nutrient) + " " + nutrient.unit());
        }
        for (int i = 0; i < day.items().size(); i++) {
            List<String> cells = new ArrayList<>(List.of(day.items().get(i).label()));
            for (Nutrient nutrient : shown()) {
                cells.add(Integer.toString(day.amount(nutrient, i)));
            }
            table.row(cells.toArray(new String[0]));
        }
        List<String> total = new ArrayList<>(List.of("total"));
        shown().forEach(n -> total.add(day.mark(n) + day.total(n)));
        table.rowLike("total", total.toArray(new String[0]));
        table.rowLike("target", cells("target", this::target));
        table.rowLike("target", cells("difference", limit -> difference(limit, day)));
        return table;
    }

    /** A row that says something about each shown nutrient with a limit. */
    private String[] cells(String name, Function<Limit, String> says) {
        List<String> cells = new ArrayList<>(List.of(name));
        shown().forEach(n -> cells.add(target.limit(Scope.DAY, n).map(says).orElse("")));
        return cells.toArray(new String[0]);
    }

    private String target(Limit limit) {
        Range range = limit.range();
        OptionalInt mark = target.mark(limit);
        return mark.isPresent()
                ? Integer.toString(mark.getAsInt())
                : (range.hasLeast() ? range.least() + "–" : "≤ ") + range.most().orElse(0);
    }

    private String difference(Limit limit, EatenDay day) {
        OptionalInt mark = target.mark(limit);
        return mark.isPresent() ? Show.signed(day.total(limit.measured()) - mark.getAsInt()) : "";
    }
}
