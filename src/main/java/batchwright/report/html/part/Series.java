package batchwright.report.html.part;

import batchwright.food.Dish;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.List;

/** How what is eaten looks in pictures: each dish has a letter and a colour, snacks and what is always eaten have theirs. */
public record Series(String letter, String look) {
    public static final Series SNACK = new Series("s", "snack");
    public static final Series ALWAYS = new Series("w", "always");

    /** Colours of dishes in the style sheet; the letter tells those apart that share one. */
    private static final int DISH_COLOURS = 4;

    public static Series of(Session session, Dish dish) {
        List<Dish> dishes = new ArrayList<>();
        session.batches().forEach(batch -> dishes.add(batch.dish()));
        int index = dishes.indexOf(dish);
        return new Series(Character.toString('A' + index), "dish" + index % DISH_COLOURS);
    }
}
