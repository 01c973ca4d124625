package batchwright.report.dishes;

import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Step;
import batchwright.report.cooking.LeftOut;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** All dishes of a kitchen, a line each: by shelf, or sorted. */
public final class DishesTable {
    private final Kitchen kitchen;
    private final Page page = new Page();

    private DishesTable(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    public static String of(Kitchen kitchen, DishOrder order) {
        return new DishesTable(kitchen).text(order);
    }

    private String text(DishOrder order) {
        page.line(Show.count(kitchen.dishIds().size(), "dish", "dishes")
                + (order == DishOrder.NAME ? "." : ", by " + order.word() + "."));
        page.gap();
        if (order == DishOrder.NAME) {
            table(order, kitchen.dishes().values());
            for (String shelf : kitchen.shelves().names()) {
                page.heading("Shelf " + shelf);
                table(order, kitchen.shelves().on(shelf));
            }
        } else {
            table(order, kitchen.allDishes());
        }
        page.gap();
        page.paragraph(
                "Days in the fridge, the cooking day being day 1; F: freezes. kcal, protein and cost are of a middling"
                        + " container with every part, by the unit price of the cheapest packs; time is for "
                        + Step.FOR_CONTAINERS + " of these, one step after another, and hands what of it is hands on.");
        LeftOut.says(kitchen).ifPresent(page::paragraph);
        return page.toString();
    }

    private void table(DishOrder order, Collection<Dish> dishes) {
        var table = new TextTable("")
                .left("dish")
                .left("kind")
                .left("days")
                .right("kcal")
                .right("prot.\ng")
                .right("time\nmin")
                .right("hands\nmin")
                .left("needs")
                .right("cost\n" + kitchen.currency());
        List<DishLine> lines =
                dishes.stream().map(dish -> DishLine.of(kitchen, dish)).toList();
        order.sorted(lines).forEach(line -> row(table, line));
        page.table(table);
        Show.atLeastNote(page, table);
    }

    private void row(TextTable table, DishLine line) {
        Dish dish = line.dish();
        table.row(
                dish.id(),
                dish.kind().name().toLowerCase(Locale.ROOT),
                dish.fridgeDays() + (dish.freezes() ? " F" : ""),
                Show.cell(line.holds(), Nutrient.ENERGY),
                Show.cell(line.holds(), Nutrient.PROTEIN),
                Integer.toString(line.work().minutes()),
                Integer.toString(line.work().handsOn()),
                needs(line),
                Show.money(line.cost(), kitchen.currency()));
    }

    private static String needs(DishLine line) {
        return line.needs().isEmpty()
                ? "-"
                : line.needs().stream().map(DishesTable::shortly).collect(Collectors.joining(" "));
    }

    private static String shortly(Appliance appliance) {
        return switch (appliance) {
            case BURNER -> "hob";
            case OVEN -> "oven";
            default -> appliance.label();
        };
    }
}
