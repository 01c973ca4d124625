package batchwright.needs.caution;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.needs.evidence.Citation;
import batchwright.person.Health;
import batchwright.person.HealthEffect;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the days of a plan hold, beside answers to questions of health that no rule of a plan keeps. */
public final class EatenCautions {
    private static final BigDecimal POTASSIUM_MG = BigDecimal.valueOf(4700);
    private static final BigDecimal CARBOHYDRATE_G = BigDecimal.valueOf(130);

    private EatenCautions() {}

    /**
     * @param average what a day holds on the average
     * @param days what each day holds, at least one
     */
    public static List<Caution> of(Health health, Nutrients average, List<Nutrients> days) {
        List<Caution> cautions = new ArrayList<>();
        BigDecimal potassium = average.get(Nutrient.POTASSIUM);
        if (health.has(HealthEffect.POTASSIUM_4700_MG) && potassium.compareTo(POTASSIUM_MG) > 0) {
            cautions.add(Caution.warn(
                    "potassium_high",
                    "An average day holds " + whole(potassium)
                            + " mg potassium. With a medicine that keeps potassium in the body more than 4700 mg can be too much: ask"
                            + " your doctor before you eat by this plan.",
                    Citation.designChoice("4700 mg, the adequate intake of 2005; from memory")));
        }
        BigDecimal carbohydrate = days.stream()
                .map(day -> day.get(Nutrient.CARBOHYDRATE))
                .min(Comparator.naturalOrder())
                .orElse(CARBOHYDRATE_G);
        if (health.has(HealthEffect.CARBOHYDRATE_130_G) && carbohydrate.compareTo(CARBOHYDRATE_G) < 0) {
            cautions.add(Caution.warn(
                    "carbohydrate_low",
                    "A day of this plan holds only " + whole(carbohydrate)
                            + " g of carbohydrate. With a medicine that ends in -gliflozin do not eat by it: less than 130 g a day can"
                            + " make the blood sour (ketoacidosis). Ask your doctor.",
                    Citation.designChoice("130 g, the RDA of IOM 2005; cases: smj.org.sg, three patients")));
        }
        return cautions;
    }

    private static String whole(BigDecimal amount) {
        return amount.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}
