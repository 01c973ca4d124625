package batchwright.audit;

import batchwright.food.Food;
import batchwright.plan.Purchase;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;

/** Each food that is used has one line, with what is used, what comes from the pantry first and what is left. */
record ShoppingList() implements Inspection {
    @Override
    public String name() {
        return "shopping list";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Grams eaten = evidence.eaten().all();
        Set<Food> listed = new HashSet<>();
        for (Purchase purchase : evidence.session().shopping()) {
            if (!listed.add(purchase.food())) {
                findings.add(purchase.food().id() + " is listed twice");
            }
            inspectLine(evidence, purchase, eaten, findings);
        }
        eaten.byFood().keySet().stream()
                .filter(food -> !listed.contains(food))
                .forEach(food -> findings.add(food.id() + " is used but not listed"));
    }

    private static void inspectLine(Evidence evidence, Purchase purchase, Grams eaten, Findings findings) {
        Food food = evidence.known().food(purchase.food()).orElse(purchase.food());
        BigDecimal used = evidence.asPurchased(food, eaten.of(food));
        BigDecimal fromPantry = evidence.fromPantry(food);
        BigDecimal bought = evidence.bought(purchase);
        compare(food, "used", purchase.usedGrams(), used, findings);
        compare(food, "from the pantry", purchase.fromPantryGrams(), fromPantry, findings);
        compare(food, "bought", purchase.boughtGrams(), bought, findings);
        compare(food, "left", purchase.leftGrams(), bought.add(fromPantry).subtract(used), findings);
        if (used.signum() == 0) {
            findings.add(food.id() + " is listed but not used");
        }
    }

    private static void compare(Food food, String what, BigDecimal stated, BigDecimal found, Findings findings) {
        if (!Tolerance.same(stated, found)) {
            findings.add(food.id() + ": " + what + " stated " + Say.against(stated, "recomputed", found, "g"));
        }
    }
}
