package batchwright.answer;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One line of the shopping list: one food in one size of pack. A food bought in two sizes has two lines, and what is used is
 * shared out among them in that order, so that lines add up. Grams are as purchased, to 0.1 g.
 *
 * @param pack empty when the pantry covers all
 */
public record BuyLine(Food food, Optional<Pack> pack, int packs, BigDecimal fromPantryGrams, BigDecimal usedGrams) {
    public static List<BuyLine> of(Session session) {
        List<BuyLine> lines = new ArrayList<>();
        session.shopping().forEach(purchase -> add(lines, purchase));
        return lines;
    }

    private static void add(List<BuyLine> lines, Purchase purchase) {
        BigDecimal pantry = tenth(purchase.fromPantryGrams());
        BigDecimal used = tenth(purchase.usedGrams());
        if (purchase.packs().isEmpty()) {
            lines.add(new BuyLine(purchase.food(), Optional.empty(), 0, pantry, used));
            return;
        }
        int more = purchase.packs().size();
        for (Map.Entry<Pack, Integer> packs : purchase.packs().entrySet()) {
            more--;
            BigDecimal here = pantry.add(packs.getKey().grams().multiply(BigDecimal.valueOf(packs.getValue())));
            BigDecimal usedHere = more == 0 ? used : used.min(here);
            lines.add(new BuyLine(purchase.food(), Optional.of(packs.getKey()), packs.getValue(), pantry, usedHere));
            used = used.subtract(usedHere);
            pantry = BigDecimal.ZERO;
        }
    }

    private static BigDecimal tenth(BigDecimal grams) {
        return grams.setScale(1, RoundingMode.HALF_UP);
    }

    public BigDecimal boughtGrams() {
        return pack.map(p -> p.grams().multiply(BigDecimal.valueOf(packs))).orElse(BigDecimal.ZERO);
    }

    /** What is left of what was taken from the pantry and bought. */
    public BigDecimal leftGrams() {
        return boughtGrams().add(fromPantryGrams).subtract(usedGrams);
    }

    public Money cost() {
        return pack.map(p -> p.price().times(packs)).orElse(Money.ZERO);
    }
}
