package batchwright.plan;

import java.util.List;

/**
 * One day of one eater.
 *
 * @param day 1 is the cooking day
 * @param servings containers by dish
 * @param snacks planned add-ons
 * @param always what the eater eats every day anyway
 */
public record Day(int day, List<Serving> servings, List<Snack> snacks, List<Snack> always) {
    public Day {
        servings = List.copyOf(servings);
        snacks = List.copyOf(snacks);
        always = List.copyOf(always);
    }
}
