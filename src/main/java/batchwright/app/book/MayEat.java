package batchwright.app.book;

import batchwright.book.Book;
import batchwright.book.BoxesLeft;
import batchwright.book.Event;
import batchwright.book.KeptPlans;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.person.Avoided;
import batchwright.person.Eater;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether a container may be offered to an eater. */
record MayEat(Kitchen kitchen, KeptPlans plans, Book book) {
    private static final BigDecimal HUNDRED_GRAMS = BigDecimal.valueOf(100);

    /** A dish that is not known any more is not judged. */
    static boolean to(Eater eater, BoxesLeft.Lot lot, Kitchen kitchen) {
        Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
        return dish == null || eater.wishes().avoided().allows(dish);
    }

    /**
     * Whether one that was filled for somebody else may: everything that is in it, by plan, recipe and book. Where nobody knows which of
     * the parts that can be left out are in it, all are.
     */
    boolean anothers(Eater eater, BoxesLeft.Lot lot) {
        Avoided avoided = eater.wishes().avoided();
        return to(eater, lot, kitchen)
                && ContainerHolds.of(lot, kitchen, plans)
                        .filter(holds -> avoided.allows(holds.cooked()))
                        .filter(holds -> holds.parts().stream().allMatch(avoided::allows))
                        .filter(holds -> mayHaveWhatElseWentIn(lot, holds.cooked(), avoided))
                        .isPresent();
    }

    /** Whether all foods beside the recipe are allowed that went in by the book, from the day before it was filled. */
    private boolean mayHaveWhatElseWentIn(BoxesLeft.Lot lot, Dish cooked, Avoided avoided) {
        Set<String> known = cooked.foods().stream().map(Food::id).collect(Collectors.toSet());
        return book.all(Event.Cooked.class)
                .filter(line -> line.event().dish().equals(lot.boxes().dish()))
                .filter(line -> !line.day().isAfter(lot.filled())
                        && !line.day().isBefore(lot.filled().minusDays(1)))
                .flatMap(line -> line.event().foods().stream())
                .map(Event.Weight::food)
                .filter(food -> !known.contains(food))
                .allMatch(food -> isAllowed(food, avoided));
    }

    private boolean isAllowed(String id, Avoided avoided) {
        return Optional.ofNullable(kitchen.foods().get(id))
                .map((Food food) -> avoided.allows(food))
                .orElse(avoided.isNothing());
    }

    /** Whether it keeps the limits that a target has on containers. */
    boolean fits(BoxesLeft.Lot lot, DayTarget target) {
        return ContainerHolds.of(lot, kitchen, plans)
                .filter(holds -> target.limits(Scope.CONTAINER).stream()
                        .allMatch(limit -> holds(limit, holds.holds().get(limit.measured()))))
                .filter(holds ->
                        target.limits(Scope.PER_100_G).stream().allMatch(limit -> holds(limit, per100g(holds, limit))))
                .isPresent();
    }

    private static BigDecimal per100g(ContainerHolds container, Limit limit) {
        return container
                .holds()
                .get(limit.measured())
                .multiply(HUNDRED_GRAMS)
                .divide(BigDecimal.valueOf(container.grams()), MathContext.DECIMAL64);
    }

    private static boolean holds(Limit limit, BigDecimal amount) {
        return amount.compareTo(BigDecimal.valueOf(limit.range().least())) >= 0
                && (limit.range().most().isEmpty()
                        || amount.compareTo(
                                        BigDecimal.valueOf(limit.range().most().getAsInt()))
                                <= 0);
    }
}
