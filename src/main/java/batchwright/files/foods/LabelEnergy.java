package batchwright.files.foods;

import batchwright.quantity.Energy;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Energy as a label states it: in kcal, in kJ or in both. */
record LabelEnergy(Optional<BigDecimal> statedKcal, Optional<BigDecimal> statedKilojoules) {
    private static final BigDecimal KJ_PER_KCAL = BigDecimal.valueOf(Energy.KJ_PER_KCAL);

    /** The kcal if they are stated, else the kJ / 4.184. */
    BigDecimal kcal() {
        return statedKcal.orElseGet(() -> statedKilojoules.orElseThrow().divide(KJ_PER_KCAL, MathContext.DECIMAL64));
    }

    /** Such as 370 kcal, or 1550 kJ (370 kcal). */
    String shown() {
        return statedKcal
                .map(kcal -> kcal.toPlainString() + " kcal")
                .orElseGet(() -> "%s kJ (%s kcal)"
                        .formatted(
                                statedKilojoules.orElseThrow().toPlainString(),
                                kcal().setScale(0, RoundingMode.HALF_UP).toPlainString()));
    }

    /**
     * Whether kJ and kcal, if both are stated, can be the same energy: each has factors of its own, and both are rounded.
     *
     * @param rounding of each, in its unit
     */
    boolean agrees(double rounding) {
        if (statedKcal.isEmpty() || statedKilojoules.isEmpty()) {
            return true;
        }
        double kcal = statedKcal.get().doubleValue();
        double kilojoules = statedKilojoules.get().doubleValue();
        return kilojoules + rounding >= LabelFactors.KJ_PER_KCAL_LEAST * (kcal - rounding)
                && kilojoules - rounding <= LabelFactors.KJ_PER_KCAL_MOST * (kcal + rounding);
    }
}
