package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a plan is asked for.
 *
 * @param seats eaters who share the batches and one shopping list; none when a dish is cooked for nobody in particular
 * @param days 1 to {@link #MOST_DAYS}
 * @param budget most to spend at the checkout
 * @param mostDishes most dishes in the cooking session
 * @param patience how long to search before answering with the best found so far
 * @param mustCook dishes that are cooked, whatever it costs
 */
public record PlanRequest(
        Kitchen kitchen,
        List<Seat> seats,
        int days,
        Optional<Money> budget,
        int mostDishes,
        Duration patience,
        Set<Dish> mustCook) {
    public static final int MOST_DAYS = 28;
    public static final int USUAL_DAYS = 5;
    public static final int USUAL_MOST_DISHES = 3;
    /** Cooking a dish for less than this is not batch cooking. */
    public static final int LEAST_CONTAINERS_OF_A_DISH = 2;

    public PlanRequest {
        seats = List.copyOf(seats);
        if (days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException("days (" + days + ") must be from 1 to " + MOST_DAYS + ".");
        }
    }

    /** A request for no dish by name. */
    public PlanRequest(
            Kitchen kitchen, List<Seat> seats, int days, Optional<Money> budget, int mostDishes, Duration patience) {
        this(kitchen, seats, days, budget, mostDishes, patience, Set.of());
    }

    public LocalDate lastDay() {
        return kitchen.cookingDay().plusDays(days - 1L);
    }

    /**
     * Grams at home, as purchased, that keep until the last day. The rest of {@link Kitchen#pantryGrams} spoils before and is
     * for cooking only.
     */
    public BigDecimal lastingGrams(Food food) {
        return kitchen.pantryGrams(food, lastDay());
    }

    public PlanRequest withBudget(Optional<Money> other) {
        return new PlanRequest(kitchen, seats, days, other, mostDishes, patience, mustCook);
    }

    public PlanRequest withKitchen(Kitchen other) {
        return new PlanRequest(other, seats, days, budget, mostDishes, patience, mustCook);
    }

    public PlanRequest withSeats(List<Seat> other) {
        return new PlanRequest(kitchen, other, days, budget, mostDishes, patience, mustCook);
    }

    public PlanRequest withDays(int other) {
        return new PlanRequest(kitchen, seats, other, budget, mostDishes, patience, mustCook);
    }

    public PlanRequest withMostDishes(int other) {
        return new PlanRequest(kitchen, seats, days, budget, other, patience, mustCook);
    }

    public PlanRequest withPatience(Duration other) {
        return new PlanRequest(kitchen, seats, days, budget, mostDishes, other, mustCook);
    }

    public PlanRequest withMustCook(Set<Dish> other) {
        return new PlanRequest(kitchen, seats, days, budget, mostDishes, patience, other);
    }
}
