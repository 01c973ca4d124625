package batchwright.app.newdish;

import batchwright.app.newdish.BatchLine.Mixed;
import batchwright.app.newdish.BatchLine.Seasoning;
import batchwright.app.newdish.BatchLine.Wrong;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How a new dish was understood, in sentences. */
public final class DishInWords {
    private final Kitchen kitchen;

    public DishInWords(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** Brown rice, long grain: 500 g, boiled to 1484 g. */
    public String says(BatchLine line) {
        if (line instanceof Wrong wrong) {
            return wrong.says();
        }
        if (line instanceof Seasoning seasoning) {
            return capital(seasoning.name())
                    + ": always at home"
                    + seasoning
                            .grams()
                            .map(g -> ", " + Show.plainText(g, 1) + " g.")
                            .orElse(", to taste.");
        }
        var mixed = (Mixed) line;
        return capital(mixed.food().name()) + ": " + Show.plainText(mixed.grams(), 1) + " g"
                + mixed.cooked()
                        .map(y -> ", " + y.method() + " to "
                                + Show.whole(mixed.grams().multiply(y.factor())) + " g")
                        .orElse("")
                + ".";
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** Each ingredient with the part that it goes into. */
    List<String> parts(TypedDish typed, NewDish dishes) {
        List<BatchLine> lines = typed.ingredients().stream().map(dishes::line).toList();
        List<Mixed> foods = lines.stream()
                .filter(Mixed.class::isInstance)
                .map(Mixed.class::cast)
                .toList();
        List<PartDraft> parts = PartDraft.of(foods, new BigDecimal(typed.containers()));
        List<String> shown = new ArrayList<>();
        for (int number = 1; number <= lines.size(); number++) {
            BatchLine line = lines.get(number - 1);
            String part = parts.stream()
                    .filter(p -> line instanceof Mixed mixed && p.mix().contains(mixed))
                    .findFirst()
                    .map(p -> " Part: " + p.name() + (p.optional() ? ", may be left out." : "."))
                    .orElse("");
            shown.add(number + "  " + says(line) + part);
        }
        return shown;
    }

    /** What one container holds and costs, and what is doubtful. */
    public List<String> review(ProposedDish proposed) {
        List<String> shown = new ArrayList<>();
        shown.add(proposed.dish().name() + " (" + proposed.dish().id() + "), keeps "
                + Show.count(proposed.dish().fridgeDays(), "day", "days")
                + (proposed.dish().freezes() ? ", freezes." : ", does not freeze."));
        shown.add("One container: " + amount(proposed, Nutrient.ENERGY) + " kcal, "
                + amount(proposed, Nutrient.PROTEIN) + " g protein, "
                + amount(proposed, Nutrient.FAT) + " g fat, "
                + amount(proposed, Nutrient.CARBOHYDRATE) + " g carbohydrate, "
                + amount(proposed, Nutrient.FIBRE) + " g fibre; "
                + proposed.cost()
                        .map(money -> kitchen.currency().text(money) + " " + kitchen.currency() + " by unit prices.")
                        .orElse("no cost without the price of "
                                + proposed.unpriced().stream().map(Food::name).collect(Collectors.joining(", "))
                                + "."));
        proposed.dish()
                .parts()
                .forEach(part -> shown.add("Part " + part.name() + ": " + part.leastGrams() + " to " + part.mostGrams()
                        + " g" + (part.optional() ? ", or none." : ".")));
        int number = 1;
        for (var step : proposed.dish().steps()) {
            shown.add(number + ". " + step.text());
            number++;
        }
        proposed.doubts().forEach(doubt -> shown.add("Doubt: " + doubt + "."));
        return shown;
    }

    private static String amount(ProposedDish proposed, Nutrient nutrient) {
        return Show.cell(proposed.holds(), nutrient);
    }
}
