package batchwright.report.foods;

import batchwright.food.Kitchen;
import batchwright.reference.find.FoundFoods;
import batchwright.report.print.Page;
import java.util.List;

/** Foods that were searched for, for people: the best first, in the table that has it. */
public final class FoundText {
    private FoundText() {}

    /**
     * @param most so many foods of USDA SR28 are shown
     * @param asked what was typed, in quotation marks
     * @param near words to try when nothing was found
     */
    public static String of(Kitchen kitchen, FoundFoods found, int most, String asked, List<String> near) {
        Page page = new Page();
        page.paragraph(found.isEmpty() ? "No food has the words " + asked + "." + tryThese(near) : says(found, asked));
        if (found.yoursFirst()) {
            page.gap();
            FoodsText.bestFirst(page, kitchen, found.yours());
        }
        Sr28Text.table(page, kitchen, found.reference(), most);
        if (!found.yoursFirst() && !found.yours().isEmpty()) {
            page.heading("In your catalogue");
            FoodsText.bestFirst(page, kitchen, found.yours());
        }
        return page.toString();
    }

    private static String says(FoundFoods found, String asked) {
        int yours = found.yours().size();
        int reference = found.reference().size();
        String counted = (yours == 0 ? "no food" : yours == 1 ? "1 food" : yours + " foods") + " of your catalogue and "
                + reference + " of USDA SR28";
        String prices = yours == 0 ? "" : " Prices are of the pack that is cheapest per edible gram.";
        return switch (found.match()) {
            case ALL ->
                Character.toUpperCase(counted.charAt(0)) + counted.substring(1)
                        + (yours + reference == 1 ? " matches " : " match ") + asked + "." + prices;
            case NEAREST ->
                "There is no " + asked + " here. Nearest: " + first(found) + ". It is not the same food." + prices;
            case SOME -> "No food has all of " + asked + ". Nearest: " + first(found) + "." + prices;
        };
    }

    private static String first(FoundFoods found) {
        return found.yoursFirst()
                ? found.yours().get(0).name()
                : found.reference().get(0).description();
    }

    private static String tryThese(List<String> near) {
        return near.isEmpty() ? " Leave out a word, or try another one." : " Nearest: " + String.join(", ", near) + ".";
    }
}
