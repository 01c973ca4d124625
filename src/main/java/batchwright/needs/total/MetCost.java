package batchwright.needs.total;

import batchwright.person.Diary;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/**
 * What METs cost by body weight alone, rest included. In use are two readings of a MET: 1 kcal per kg and hour, and 3.5 ml of
 * oxygen per kg and minute, at 5 kcal a litre 5 % more. Measured rest is about 2.6 ml (Byrne et al. 2005, from memory, not seen), and
 * less still in heavy people, so both overstate what heavy people spend. The program shows them and builds nothing on them.
 *
 * <p>Source: Ainsworth BE et al. Med Sci Sports Exerc 2011;43:1575-1581.
 */
public final class MetCost {
    private static final double KCAL_PER_KG_AND_HOUR = 1;
    private static final double ML_OXYGEN_PER_KG_AND_MINUTE = 3.5;
    private static final double KCAL_PER_ML_OXYGEN = 0.005;
    private static final double MINUTES_AN_HOUR = 60;
    private static final double HOURS_A_DAY = 24;

    private MetCost() {}

    /** At 1 kcal per kg and hour. */
    public static Energy byHour(double mets, Mass weight, double hours) {
        return new Energy(mets * KCAL_PER_KG_AND_HOUR * weight.kg() * hours);
    }

    /** At 3.5 ml of oxygen per kg and minute. */
    public static Energy byOxygen(double mets, Mass weight, double minutes) {
        return new Energy(mets * ML_OXYGEN_PER_KG_AND_MINUTE * KCAL_PER_ML_OXYGEN * weight.kg() * minutes);
    }

    /** A day of the diary at 1 kcal per kg and hour: its PAL is its mean MET. */
    public static Energy ofDayByHour(Diary diary, Mass weight) {
        return byHour(diary.pal(), weight, HOURS_A_DAY);
    }

    /** A day of the diary at 3.5 ml of oxygen per kg and minute. */
    public static Energy ofDayByOxygen(Diary diary, Mass weight) {
        return byOxygen(diary.pal(), weight, HOURS_A_DAY * MINUTES_AN_HOUR);
    }
}
