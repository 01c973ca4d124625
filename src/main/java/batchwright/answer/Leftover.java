package batchwright.answer;

import batchwright.food.Food;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/**
 * What stays in bought packs when a plan is eaten: stock, or waste when the food spoils. What lasts keeps its worth for a later plan,
 * what spoils has none; the search looks at it only to choose among plans of equal cost.
 *
 * @param grams as purchased
 * @param worth at the price of its pack, to the minor unit
 */
public record Leftover(Food food, BigDecimal grams, Money worth) {
    /** What spoils first, then the dearest first; less than a gram counts as nothing. */
    public static List<Leftover> of(Session session) {
        return BuyLine.of(session).stream()
                .filter(line -> line.pack().isPresent())
                .filter(line -> line.leftGrams().compareTo(BigDecimal.ONE) >= 0)
                .map(line -> new Leftover(line.food(), line.leftGrams(), worth(line)))
                .sorted(Comparator.comparing(Leftover::lasts).thenComparing(Leftover::worth, Comparator.reverseOrder()))
                .toList();
    }

    private static Money worth(BuyLine line) {
        return Money.rounded(line.cost().shareOf(line.leftGrams().min(line.boughtGrams()), line.boughtGrams()));
    }

    public static Money sum(List<Leftover> left) {
        return left.stream().map(Leftover::worth).reduce(Money.ZERO, Money::plus);
    }

    /** Beyond about two weeks. */
    public boolean lasts() {
        return !food.perishable();
    }
}
