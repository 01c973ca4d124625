package batchwright.app.book;

import batchwright.book.BoxesLeft;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.person.Eater;

/** Whether a container may be offered to an eater. */
final class MayEat {
    private MayEat() {}

    /** A dish that is not known any more is not judged. */
    static boolean to(Eater eater, BoxesLeft.Lot lot, Kitchen kitchen) {
        Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
        return dish == null || eater.wishes().avoided().allows(dish);
    }
}
