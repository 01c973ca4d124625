package batchwright.audit;

import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.util.OptionalInt;

/** A nutrient's least and most, and the sentence for an amount outside them. */
record Limits(Nutrient nutrient, int least, OptionalInt most) {
    void check(String where, Grams grams, Findings findings) {
        BigDecimal found = grams.holds(nutrient);
        BigDecimal floor = BigDecimal.valueOf(least);
        if (Tolerance.less(found, floor)) {
            say(where, found, "at least", floor, findings);
        }
        if (most.isPresent() && Tolerance.less(BigDecimal.valueOf(most.getAsInt()), found)) {
            say(where, found, "at most", BigDecimal.valueOf(most.getAsInt()), findings);
        }
    }

    private void say(String where, BigDecimal found, String limit, BigDecimal bound, Findings findings) {
        findings.add(where + ": " + nutrient.label() + " " + Say.against(found, limit, bound, nutrient.unit()));
    }
}
