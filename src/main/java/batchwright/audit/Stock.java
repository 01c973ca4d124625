package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Purchase;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** What is used, and the room to spare that is asked for, is at home or bought in whole packs, and no pack is bought that could stay in the shop. */
record Stock() implements Inspection {
    @Override
    public String name() {
        return "stock";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Grams eaten = evidence.eaten().all();
        Grams weighed = evidence.eaten().weighed();
        Map<Food, BigDecimal> bought = bought(evidence, findings);
        eaten.byFood().forEach((food, edible) -> {
            BigDecimal used = atHand(evidence, food, edible, weighed);
            BigDecimal has = evidence.atHome(food).add(bought.getOrDefault(food, BigDecimal.ZERO));
            if (Tolerance.less(has, used)) {
                findings.add(food.id() + ": needed " + Say.against(used, "at home and bought", has, "g"));
            }
        });
        for (Purchase purchase : evidence.session().shopping()) {
            noNeedlessPack(evidence, purchase, eaten, weighed, findings);
        }
    }

    /** Grams as purchased: what is used, and room to spare of what is weighed. */
    private static BigDecimal atHand(Evidence evidence, Food food, BigDecimal edible, Grams weighed) {
        BigDecimal room =
                weighed.of(food).multiply(evidence.request().kitchen().shops().reserve());
        return evidence.asPurchased(food, edible.add(room));
    }

    private static Map<Food, BigDecimal> bought(Evidence evidence, Findings findings) {
        Map<Food, BigDecimal> bought = new LinkedHashMap<>();
        for (Purchase purchase : evidence.session().shopping()) {
            bought.merge(purchase.food(), evidence.bought(purchase), BigDecimal::add);
            purchase.packs().forEach((pack, count) -> {
                if (count < 1) {
                    findings.add(purchase.food().id() + ": " + count + " packs is no count");
                }
                if (!pack.food().equals(purchase.food())) {
                    findings.add(
                            purchase.food().id() + ": a pack of " + pack.food().id());
                }
            });
        }
        return bought;
    }

    private static void noNeedlessPack(
            Evidence evidence, Purchase purchase, Grams eaten, Grams weighed, Findings findings) {
        Food food = evidence.known().food(purchase.food()).orElse(purchase.food());
        BigDecimal used = atHand(evidence, food, eaten.of(food), weighed);
        BigDecimal besides =
                evidence.asPurchased(food, evidence.eaten().besides().of(food));
        BigDecimal bought = evidence.bought(purchase);
        for (Pack pack : purchase.packs().keySet()) {
            BigDecimal grams = evidence.grams(pack);
            BigDecimal less = bought.subtract(grams);
            boolean enough = !Tolerance.less(evidence.atHome(food).add(less), used);
            boolean keepsEnough = !Tolerance.less(evidence.keepsAtHome(food).add(less), besides);
            if (enough && keepsEnough) {
                findings.add(food.id() + ": one pack of "
                        + grams.stripTrailingZeros().toPlainString() + " g less would do");
            }
        }
    }
}
