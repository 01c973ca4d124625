package batchwright.report.dishes;

import batchwright.food.Nutrient;
import batchwright.quantity.Money;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** By what a list of dishes is sorted; equals stay by name. */
@SuppressWarnings("ImmutableEnumChecker") // comparators that hold nothing
public enum DishOrder {
    NAME(Comparator.comparing(line -> line.dish().id())),
    TIME(Comparator.comparingInt(line -> line.work().minutes())),
    HANDS(Comparator.comparingInt(line -> line.work().handsOn())),
    /** Little equipment first. */
    NEEDS(Comparator.<DishLine>comparingInt(line -> line.needs().size())
            .thenComparing(line -> line.needs().toString())),
    COST(Comparator.comparingLong(line -> line.cost().map(Money::minor).orElse(Long.MAX_VALUE))),
    KCAL(Comparator.comparing(line -> line.holds().get(Nutrient.ENERGY))),
    /** Most first. */
    PROTEIN(Comparator.comparing(line -> line.holds().get(Nutrient.PROTEIN).negate())),
    /** Those that keep longest first. */
    KEEPS(Comparator.comparingInt(line -> -line.dish().fridgeDays()));

    private final Comparator<DishLine> by;

    DishOrder(Comparator<DishLine> by) {
        this.by = by;
    }

    /** As it is typed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<DishOrder> of(String word) {
        return Arrays.stream(values())
                .filter(order -> order.word().equals(word))
                .findFirst();
    }

    List<DishLine> sorted(List<DishLine> lines) {
        return lines.stream().sorted(by.thenComparing(line -> line.dish().id())).toList();
    }
}
