package batchwright.needs.caution;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.needs.evidence.Citation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A gentle word where an average day of a plan holds very much fibre. Cheap food is beans, grain and cabbage, and no upper level
 * is published, so fibre has no ceiling in a plan; but a gut that is not used to it complains.
 */
public final class FibreCaution {
    /** Above 50 to 60 g wind and cramps are common; common practice. */
    private static final BigDecimal VERY_MUCH_G = BigDecimal.valueOf(50);
    /** Whoever asks for more is warned only above this multiple of what is asked; a choice. */
    private static final BigDecimal FAR_ABOVE = new BigDecimal("1.25");

    private static final Citation SOURCE = new Citation(
            "common practice: wind and cramps above 50 to 60 g a day; IOM, Dietary Reference Intakes (2005) sets no upper level for fibre;"
                    + " raising it slowly and drinking enough is common practice");

    private FibreCaution() {}

    /** @param averageG fibre of an average day of the plan [g] */
    public static Optional<Caution> of(DayTarget target, BigDecimal averageG) {
        int floor = target.day(Nutrient.FIBRE).least();
        return averageG.compareTo(much(BigDecimal.valueOf(floor))) > 0
                ? Optional.of(Caution.warn("fibre_high", text(averageG, floor), SOURCE))
                : Optional.empty();
    }

    private static BigDecimal much(BigDecimal floor) {
        return VERY_MUCH_G.max(floor.multiply(FAR_ABOVE));
    }

    private static String text(BigDecimal averageG, int floor) {
        return "An average day holds " + averageG.setScale(0, RoundingMode.HALF_UP) + " g of fibre; " + floor
                + " g are asked for. No upper level is published, but if you are not used to that much, you may get wind and"
                + " cramps: raise fibre over some weeks and drink enough. If you have a bowel illness, ask a doctor first.";
    }
}
