package batchwright.app.newdish;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Nutrients;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * A new dish as it would be written.
 *
 * @param page the text of its file
 * @param dish as the usual reader reads that
 * @param why it keeps and freezes so
 * @param holds nutrients of one container, filled as the batch was written
 * @param cost of that container; empty when a food has no price
 * @param unpriced foods that no shop of the tables sells and that are not at home
 * @param doubts what a check would say of it
 */
public record ProposedDish(
        String page,
        Dish dish,
        String why,
        Nutrients holds,
        Optional<Money> cost,
        List<Food> unpriced,
        List<String> doubts) {}
