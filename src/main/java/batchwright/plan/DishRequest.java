package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;

/**
 * Containers of one dish, all alike, for nobody in particular.
 *
 * @param kitchen without its pantry when that shall not be used
 * @param containers how many, 1 to {@link #MOST_CONTAINERS}
 * @param with names of optional parts that must be in
 * @param without names of optional parts that must be left out
 * @param pantry whether what is at home may be used
 * @param budget most to spend at the checkout
 * @param patience how long to search before answering with the best found so far
 */
public record DishRequest(
        Kitchen kitchen,
        Dish dish,
        int containers,
        ContainerWish wish,
        Set<String> with,
        Set<String> without,
        boolean pantry,
        Optional<Money> budget,
        Duration patience) {
    public static final int USUAL_CONTAINERS = 5;
    /** More does not fit the pots and the fridge of a home. */
    public static final int MOST_CONTAINERS = 60;

    public DishRequest {
        if (containers < 1 || containers > MOST_CONTAINERS) {
            throw new IllegalArgumentException(
                    "containers (" + containers + ") must be from 1 to " + MOST_CONTAINERS + ".");
        }
        kitchen = pantry ? kitchen : kitchen.withoutPantry();
        with = Set.copyOf(with);
        without = Set.copyOf(without);
    }

    /** Whether the part may be left out of the containers. */
    public boolean mayLeaveOut(Part part) {
        return part.optional() && !with.contains(part.name());
    }

    /** Whether the part may be in the containers. */
    public boolean mayHold(Part part) {
        return !without.contains(part.name());
    }

    public DishRequest withContainers(int other) {
        return new DishRequest(kitchen, dish, other, wish, with, without, pantry, budget, patience);
    }

    public DishRequest withWish(ContainerWish other) {
        return new DishRequest(kitchen, dish, containers, other, with, without, pantry, budget, patience);
    }

    public DishRequest withParts(Set<String> in, Set<String> out) {
        return new DishRequest(kitchen, dish, containers, wish, in, out, pantry, budget, patience);
    }

    public DishRequest withBudget(Optional<Money> other) {
        return new DishRequest(kitchen, dish, containers, wish, with, without, pantry, other, patience);
    }
}
