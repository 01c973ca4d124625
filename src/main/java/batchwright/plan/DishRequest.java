package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Containers of one dish, all alike, for nobody in particular.
 *
 * @param kitchen without its pantry when that must not be used
 * @param containers how many, 1 to {@link #MOST_CONTAINERS}
 * @param pantry whether what is at home may be used
 * @param budget most to spend at the checkout
 * @param patience how long to search before answering with the best found so far
 */
public record DishRequest(
        Kitchen kitchen,
        Dish dish,
        int containers,
        ContainerWish wish,
        boolean pantry,
        Optional<Money> budget,
        Duration patience) {
    public static final int USUAL_CONTAINERS = 5;
    /** More do not fit the pots and the fridge of a home. */
    public static final int MOST_CONTAINERS = 60;

    public DishRequest {
        if (containers < 1 || containers > MOST_CONTAINERS) {
            throw new IllegalArgumentException(
                    "containers (" + containers + ") must be from 1 to " + MOST_CONTAINERS + ".");
        }
        kitchen = pantry ? kitchen : kitchen.withoutPantry();
    }

    /** Names of optional parts that must be in. */
    public Set<String> with() {
        return wish.with();
    }

    /** Names of optional parts that must be left out. */
    public Set<String> without() {
        return wish.without();
    }

    /** Whether the part may be left out of the containers. */
    public boolean mayLeaveOut(Part part) {
        return part.optional() && !with().contains(part.name());
    }

    /** Whether the part may be in the containers. */
    public boolean mayHold(Part part) {
        return !without().contains(part.name());
    }

    /** The same kitchen and budget for a plan of one day, with nobody at the table. */
    public PlanRequest forNobody() {
        return new PlanRequest(kitchen, List.of(), 1, budget, 1, patience);
    }

    public DishRequest withContainers(int other) {
        return new DishRequest(kitchen, dish, other, wish, pantry, budget, patience);
    }

    public DishRequest withWish(ContainerWish other) {
        return new DishRequest(kitchen, dish, containers, other, pantry, budget, patience);
    }

    public DishRequest withParts(Set<String> in, Set<String> out) {
        return withWish(wish.withParts(in, out));
    }

    public DishRequest withBudget(Optional<Money> other) {
        return new DishRequest(kitchen, dish, containers, wish, pantry, other, patience);
    }
}
