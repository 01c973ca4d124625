package batchwright.audit;

import batchwright.food.Part;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.math.BigDecimal;

/**
 * The cooked grams to weigh out are the raw grams times the files' yields, less the fat poured off of what has no yield, to the
 * nearest 5 g; pieces are whole.
 */
record CookedWeights() implements Inspection {
    private static final int MARK_G = 5;
    private static final BigDecimal HALF_A_MARK = new BigDecimal("2.5");

    @Override
    public String name() {
        return "cooked weights";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.fills((batch, fill) -> {
            for (Portion portion : fill.portions()) {
                evidence.known()
                        .part(batch.dish(), portion.part())
                        .ifPresent(part -> inspectPortion(batch.dish().id(), fill, part, portion, findings));
            }
        });
    }

    private static void inspectPortion(String dish, Fill fill, Part part, Portion portion, Findings findings) {
        String where = dish + fill.forWhom() + ": " + part.name();
        BigDecimal cooked = PackedSize.grams(part, portion.rawGrams());
        BigDecimal stated = BigDecimal.valueOf(portion.cookedGrams());
        if (Tolerance.less(HALF_A_MARK, stated.subtract(cooked).abs()) || portion.cookedGrams() % MARK_G != 0) {
            findings.add(where + " stated " + Say.against(stated, "cooked weight is", cooked, "g"));
        }
        if (part.pieces() && portion.pieces() * part.stepGrams() != portion.rawGrams()) {
            findings.add(where + " stated " + portion.pieces() + " pieces of " + part.stepGrams() + " g for "
                    + portion.rawGrams() + " g");
        }
    }
}
