package batchwright.needs.caution;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.needs.evidence.Citation;
import batchwright.person.Health;
import batchwright.person.HealthEffect;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** What an average day of a plan holds, beside an answer to a question of health that no rule of a plan keeps. */
public final class EatenCautions {
    private static final BigDecimal POTASSIUM_MG = BigDecimal.valueOf(4700);

    private EatenCautions() {}

    /** @param average what a day holds on the average */
    public static Optional<Caution> of(Health health, Nutrients average) {
        BigDecimal potassium = average.get(Nutrient.POTASSIUM);
        return health.has(HealthEffect.POTASSIUM_4700_MG) && potassium.compareTo(POTASSIUM_MG) > 0
                ? Optional.of(Caution.warn(
                        "potassium_high",
                        "An average day holds "
                                + potassium.setScale(0, RoundingMode.HALF_UP).toPlainString()
                                + " mg potassium. With a medicine that keeps potassium in the body more than 4700 mg can be too"
                                + " much: ask your doctor before you eat by this plan.",
                        Citation.designChoice("4700 mg, the adequate intake of 2005; from memory")))
                : Optional.empty();
    }
}
