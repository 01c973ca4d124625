package batchwright.app;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.text.NearestName;
import java.util.Locale;

/** One dish by its id. */
public final class FindDish {
    private FindDish() {}

    /** @throws Refused when there is no such dish */
    public static Dish answer(Kitchen kitchen, String id) {
        return kitchen.dish(id.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> Refused.because(
                        "there is no dish called \"" + id + "\" in foods/dishes/",
                        NearestName.of(id, kitchen.dishIds())
                                .map(name -> "Nearest: " + name + ".")
                                .orElse("\"dishes\" lists them all.")));
    }
}
