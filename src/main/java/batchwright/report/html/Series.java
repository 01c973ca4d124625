package batchwright.report.html;

import batchwright.food.Dish;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.List;

/** How what is eaten looks in pictures: each dish has a letter and a colour, snacks and what is always eaten have theirs. */
record Series(String letter, String look) {
    static final Series SNACK = new Series("s", "snack");
    static final Series ALWAYS = new Series("w", "always");

    /** Colours of dishes in the style sheet; the letter tells those apart that share one. */
    private static final int DISH_COLOURS = 4;

    static Series of(Session session, Dish dish) {
        List<Dish> dishes = new ArrayList<>();
        session.batches().forEach(batch -> dishes.add(batch.dish()));
        int index = dishes.indexOf(dish);
        return new Series(Character.toString('A' + index), "dish" + index % DISH_COLOURS);
    }
}
