package batchwright.food.hazard;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.text.ResourceTable;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One rule of hazards.csv.
 *
 * @param code of the caution, such as frozen_berries
 * @param signs what in a dish makes it so, all of it; none when the food alone does
 * @param figure the amount in the rule, in the unit named in its words
 */
public record Hazard(
        String code,
        Kind kind,
        Who who,
        FoodWords foods,
        List<Sign> signs,
        Optional<BigDecimal> figure,
        HazardAdvice advice) {
    private static final int COLUMNS = 10;
    private static final List<Hazard> ALL = ResourceTable.divided(Hazard.class, "hazards.csv", COLUMNS).stream()
            .map(Hazard::of)
            .toList();

    /** What follows from it. */
    public enum Kind {
        /** The file of the dish is refused. */
        BLOCK,
        /** An amount, or what some should leave out. */
        LIMIT,
        /** Said beside a dish or plan. */
        CAUTION
    }

    /** Whom it is about. */
    public enum Who {
        EVERYONE,
        /** From 65 years on, or with weak defences. */
        AT_RISK,
        MAY_BECOME_PREGNANT
    }

    public Hazard {
        signs = List.copyOf(signs);
    }

    private static Hazard of(List<String> cells) {
        String figure = cells.get(6);
        return new Hazard(
                cells.get(0),
                Kind.valueOf(cells.get(1).toUpperCase(Locale.ROOT)),
                Who.valueOf(cells.get(2).toUpperCase(Locale.ROOT)),
                FoodWords.of(cells.get(3), cells.get(4)),
                Sign.all(cells.get(5)),
                figure.equals("-") ? Optional.empty() : Optional.of(new BigDecimal(figure)),
                new HazardAdvice(cells.get(7), cells.get(8), cells.get(9)));
    }

    public static List<Hazard> all() {
        return ALL;
    }

    public static Hazard of(String code) {
        return ALL.stream()
                .filter(hazard -> hazard.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("code (" + code + ") must be in hazards.csv."));
    }

    /** The amount of a rule that has one. */
    public BigDecimal amount() {
        return figure.orElseThrow();
    }

    /** Foods of the dish that it makes dangerous. */
    public List<Food> in(Dish dish) {
        return dish.foods().stream()
                .filter(foods::fit)
                .filter(food -> signs.stream().allMatch(sign -> sign.isIn(dish, food)))
                .toList();
    }

    /** Those that are dangerous as they are sold. */
    public List<Food> in(Collection<Food> eatenAsSold) {
        return signs.stream().allMatch(Sign::isWithoutDish)
                ? eatenAsSold.stream().filter(foods::fit).toList()
                : List.of();
    }
}
