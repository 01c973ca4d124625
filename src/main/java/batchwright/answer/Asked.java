package batchwright.answer;

import batchwright.food.Kitchen;
import batchwright.needs.Needs;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * What a plan was asked for.
 *
 * @param kitchen with every dish there is, including those that were not to be cooked
 * @param named the eaters, as the command named them
 * @param needs of each eater, in the order of the command
 * @param budget most to spend, if there is a limit
 * @param sessions in how many cooking sessions
 * @param shopOnce whether everything is bought before the first of several sessions
 */
public record Asked(
        Kitchen kitchen,
        List<String> named,
        List<Needs> needs,
        int days,
        Optional<Money> budget,
        int sessions,
        boolean shopOnce) {
    public Asked {
        named = List.copyOf(named);
        needs = List.copyOf(needs);
    }

    /** What one cooking session was asked for. It has no names to ask for it again by: that would be another question. */
    Asked forOne(Session session) {
        return new Asked(
                session.kitchen().withDishes(kitchen.dishes()),
                List.of(),
                needs,
                session.days(),
                Optional.empty(),
                1,
                false);
    }
}
