package batchwright.report.foods;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.reference.Sr28Food;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;
import java.util.Optional;

/** Foods of USDA SR28 that match, and which of them the catalogue has. */
final class Sr28Text {
    private Sr28Text() {}

    /**
     * @param foods all that match, best first
     * @param most so many are shown
     */
    static void table(Page page, Kitchen kitchen, List<Sr28Food> foods, int most) {
        if (foods.isEmpty()) {
            return;
        }
        int shown = Math.min(most, foods.size());
        page.heading("USDA SR28, per 100 g of the edible part"
                + (shown < foods.size() ? ": the first " + shown + " of " + foods.size() : ""));
        var table = new TextTable("")
                .left("NDB")
                .left("description")
                .right("kcal")
                .right("protein\ng")
                .right("fat\ng")
                .right("carb\ng");
        foods.stream()
                .limit(shown)
                .forEach(food -> table.row(
                        food.ndb(),
                        food.description()
                                + yours(kitchen, food).map(f -> " = " + f.id()).orElse(""),
                        amount(food, Nutrient.ENERGY, 0),
                        amount(food, Nutrient.PROTEIN, 1),
                        amount(food, Nutrient.FAT, 1),
                        amount(food, Nutrient.CARBOHYDRATE, 1)));
        page.table(table);
        page.gap();
        page.paragraph(hint(kitchen, foods, shown));
    }

    /** The food of the catalogue with this NDB number. */
    static Optional<Food> yours(Kitchen kitchen, Sr28Food food) {
        return kitchen.foods().values().stream()
                .filter(f -> f.ndb().filter(food.ndb()::equals).isPresent())
                .findFirst();
    }

    private static String amount(Sr28Food food, Nutrient nutrient, int decimals) {
        return food.amount(nutrient)
                .map(value -> Show.rounded(value, decimals).toPlainString())
                .orElse("-");
    }

    private static String hint(Kitchen kitchen, List<Sr28Food> foods, int shown) {
        boolean some =
                foods.stream().limit(shown).anyMatch(f -> yours(kitchen, f).isPresent());
        String take = foods.stream()
                .filter(f -> yours(kitchen, f).isEmpty())
                .findFirst()
                .or(() -> foods.stream().findFirst())
                .map(f -> "\"foods --take " + f.ndb() + "\" prints the line for your catalogue.")
                .orElse("");
        return (some ? "\"= food\": it is in your catalogue. " : "")
                + take
                + (shown < foods.size() ? " --all shows all." : "");
    }
}
