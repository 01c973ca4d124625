package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Lot;
import batchwright.plan.UseUp;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What spoils before the last day is used in batches only, so snacks and what is always eaten come from lots that keep and from
 * packs; and what is said to be left to use up is.
 */
record UseBy() implements Inspection {
    @Override
    public String name() {
        return "use by";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        Grams besides = evidence.eaten().besides();
        besides.byFood().forEach((food, edible) -> {
            BigDecimal used = evidence.asPurchased(food, edible);
            BigDecimal keeps = evidence.keepsAtHome(food).add(evidence.bought(food));
            boolean spoils = evidence.keepsAtHome(food).compareTo(evidence.atHome(food)) < 0;
            if (spoils && Tolerance.less(keeps, used)) {
                findings.add(food.id() + ": eaten besides containers "
                        + Say.against(used, "bought or keeping until the last day", keeps, "g"));
            }
        });
        List<UseUp> stated = UseUp.of(evidence.session());
        List<UseUp> found = leftToUseUp(evidence);
        if (!same(stated, found)) {
            findings.add("to use up is stated " + stated + ", recomputed " + found);
        }
    }

    private static boolean same(List<UseUp> stated, List<UseUp> found) {
        if (stated.size() != found.size()) {
            return false;
        }
        for (int i = 0; i < stated.size(); i++) {
            if (!stated.get(i).food().equals(found.get(i).food())
                    || !stated.get(i).useBy().equals(found.get(i).useBy())
                    || !Tolerance.same(stated.get(i).grams(), found.get(i).grams())) {
                return false;
            }
        }
        return true;
    }

    private static List<UseUp> leftToUseUp(Evidence evidence) {
        List<UseUp> left = new ArrayList<>();
        evidence.request().kitchen().pantry().keySet().forEach(food -> left.addAll(leftToUseUp(evidence, food)));
        return left;
    }

    /** Day by day: what is cooked on day 1 takes the earliest dates that spoil; all else that the pantry gives, the rest. */
    private static List<UseUp> leftToUseUp(Evidence evidence, Food food) {
        LocalDate last = evidence.day(evidence.request().days());
        BigDecimal toCook = evidence.asPurchased(food, evidence.eaten().cooked().of(food));
        BigDecimal toTake = evidence.fromPantry(food);
        List<UseUp> left = new ArrayList<>();
        List<Lot> dated = evidence.request().kitchen().lotsOf(food).stream()
                .filter(lot -> lot.useBy().isPresent())
                .sorted(Comparator.comparing(lot -> lot.useBy().orElseThrow()))
                .toList();
        for (Lot lot : dated) {
            LocalDate useBy = lot.useBy().orElseThrow();
            if (useBy.isBefore(evidence.day(1)) || useBy.isAfter(last)) {
                continue;
            }
            BigDecimal taken = useBy.isBefore(last)
                    ? lot.grams().min(toCook).min(toTake)
                    : lot.grams().min(toTake);
            toCook = useBy.isBefore(last) ? toCook.subtract(taken) : toCook;
            toTake = toTake.subtract(taken);
            BigDecimal over = lot.grams().subtract(taken);
            if (over.compareTo(BigDecimal.ONE) >= 0) {
                left.add(new UseUp(food, over, useBy));
            }
        }
        return left;
    }
}
