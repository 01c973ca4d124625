package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.plan.left.LeftContainers;
import batchwright.plan.left.LeftDish;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a plan is asked for.
 *
 * @param seats eaters who share the batches and the shopping; none when a dish is cooked for nobody in particular
 * @param days 1 to {@link #MOST_DAYS}
 * @param budget most to spend at the checkout
 * @param mostDishes most dishes in a cooking session
 * @param cooking in how many sessions, no more than days
 * @param patience how long to search before answering with the best found so far
 */
public record PlanRequest(
        Kitchen kitchen,
        List<Seat> seats,
        int days,
        Optional<Money> budget,
        int mostDishes,
        Cooking cooking,
        Duration patience) {
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
        if (cooking.sessions() > days) {
            throw new IllegalArgumentException(
                    "cooking.sessions (" + cooking.sessions() + ") must be no more than days (" + days + ").");
        }
    }

    /** All is cooked in one session. */
    public PlanRequest(
            Kitchen kitchen, List<Seat> seats, int days, Optional<Money> budget, int mostDishes, Duration patience) {
        this(kitchen, seats, days, budget, mostDishes, Cooking.ONCE, patience);
    }

    /** Numbers of all cooking sessions, from 1. */
    public List<Integer> sessions() {
        return IntStream.rangeClosed(1, cooking.sessions()).boxed().toList();
    }

    /** The day on which a session cooks, the first being 1. */
    public int firstDay(int session) {
        return cooking.firstDay(session, days);
    }

    /** For how many days a session cooks. */
    public int days(int session) {
        return cooking.days(session, days);
    }

    public LocalDate cookingDay(int session) {
        return kitchen.cookingDay().plusDays(firstDay(session) - 1L);
    }

    /** Dishes that are cooked, whatever it costs. */
    public Set<Dish> mustCook() {
        return cooking.mustCook();
    }

    /** Containers from before that are eaten. */
    public LeftContainers left() {
        return cooking.left();
    }

    /**
     * So many containers of a dish at least, if it is eaten at all: all that are left of an eater, or what is worth cooking. Where only the rest of a
     * plan is cooked for, one may be all that is missing.
     */
    public int leastContainers(Dish dish) {
        return left().of(dish).map(LeftDish::least).orElse(left().dishes().isEmpty() ? LEAST_CONTAINERS_OF_A_DISH : 1);
    }

    /** Most dishes that are cooked anew: what is left from before counts for none of them. */
    public int mostCookedAnew() {
        return mostDishes - left().dishes().size();
    }

    public Variety variety() {
        return cooking.variety();
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
        return new PlanRequest(kitchen, seats, days, other, mostDishes, cooking, patience);
    }

    public PlanRequest withKitchen(Kitchen other) {
        return new PlanRequest(other, seats, days, budget, mostDishes, cooking, patience);
    }

    public PlanRequest withSeats(List<Seat> other) {
        return new PlanRequest(kitchen, other, days, budget, mostDishes, cooking, patience);
    }

    public PlanRequest withDays(int other) {
        return new PlanRequest(kitchen, seats, other, budget, mostDishes, cooking, patience);
    }

    public PlanRequest withMostDishes(int other) {
        return new PlanRequest(kitchen, seats, days, budget, other, cooking, patience);
    }

    public PlanRequest withPatience(Duration other) {
        return new PlanRequest(kitchen, seats, days, budget, mostDishes, cooking, other);
    }

    public PlanRequest withMustCook(Set<Dish> other) {
        return withCooking(cooking.withMustCook(other));
    }

    /** With containers from before besides the dishes that may be cooked. */
    public PlanRequest withLeft(LeftContainers left) {
        Set<Dish> must = new LinkedHashSet<>(mustCook());
        must.addAll(left.eaten());
        return new PlanRequest(
                left.in(kitchen),
                seats,
                days,
                budget,
                mostDishes + left.dishes().size(),
                cooking.withMustCook(must).withLeft(left),
                patience);
    }

    public PlanRequest withVariety(Variety other) {
        return withCooking(cooking.withVariety(other));
    }

    public PlanRequest withCooking(Cooking other) {
        return new PlanRequest(kitchen, seats, days, budget, mostDishes, other, patience);
    }
}
