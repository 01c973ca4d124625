package batchwright.audit;

import batchwright.food.Nutrient;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import java.math.BigDecimal;

/** Each container holds the energy, protein and fat that were asked for. */
record ContainerAsked(DishRequest asked) implements Inspection {
    @Override
    public String name() {
        return "container asked for";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        ContainerWish wish = asked.wish();
        evidence.fills((batch, fill) -> {
            Grams grams = evidence.eaten().inContainer(batch.dish(), fill);
            wish.energy().ifPresent(band -> {
                atLeast(grams, Nutrient.ENERGY, band.leastKcal(), findings);
                atMost(grams, Nutrient.ENERGY, band.mostKcal(), findings);
            });
            wish.proteinLeastG().ifPresent(least -> atLeast(grams, Nutrient.PROTEIN, least, findings));
            wish.fatMostG().ifPresent(most -> atMost(grams, Nutrient.FAT, most, findings));
        });
    }

    private static void atLeast(Grams grams, Nutrient nutrient, BigDecimal least, Findings findings) {
        BigDecimal found = grams.holds(nutrient);
        if (Tolerance.less(found, least)) {
            findings.add(nutrient.label() + " " + Say.against(found, "at least", least, nutrient.unit()));
        }
    }

    private static void atMost(Grams grams, Nutrient nutrient, BigDecimal most, Findings findings) {
        BigDecimal found = grams.holds(nutrient);
        if (Tolerance.less(most, found)) {
            findings.add(nutrient.label() + " " + Say.against(found, "at most", most, nutrient.unit()));
        }
    }
}
