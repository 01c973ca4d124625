package batchwright.report.html.web;

import batchwright.answer.AtHome;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.report.print.Dates;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What is at home, and a form each for what was counted and for a price that was seen.
 *
 * @param home foods with what is there of them
 * @param foods to choose from, by name
 * @param typed what stands in the fields of the form that was wrong
 */
public record CupboardPage(
        Frame frame,
        List<Stock> home,
        List<OneFood> foods,
        List<String> shops,
        String currency,
        Map<String, String> typed) {
    /** Some of a food at home. */
    public record Stock(String name, String says) {}

    /** A food by its short name. */
    public record OneFood(String id, String name) {}

    public static CupboardPage of(Frame frame, AtHome home, Kitchen kitchen, Map<String, String> typed) {
        return new CupboardPage(
                frame,
                home.foods().entrySet().stream()
                        .flatMap(entry -> entry.getValue().stream()
                                .filter(lot -> lot.grams().compareTo(BigDecimal.ONE) >= 0)
                                .map(lot -> new Stock(
                                        entry.getKey().name(),
                                        frame.units().food(lot.grams())
                                                + lot.useBy()
                                                        .map(day -> ", use by " + Dates.shortly(day))
                                                        .orElse(""))))
                        .sorted(Comparator.comparing(Stock::name))
                        .toList(),
                kitchen.foods().values().stream()
                        .sorted(Comparator.comparing(Food::name))
                        .map(food -> new OneFood(food.id(), food.name()))
                        .toList(),
                List.copyOf(kitchen.shopNames()),
                kitchen.currency().toString(),
                typed);
    }

    /** What was typed into a field. */
    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }
}
