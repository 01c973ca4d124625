package batchwright.needs.total;

import batchwright.person.ActivityFacts;
import batchwright.person.Diary;
import batchwright.person.PhysicalActivity;
import batchwright.quantity.Energy;

/**
 * What exercise takes of a day above daily living. From facts or a diary it is counted: resting energy / 24 x (METs - 1) for each hour of training,
 * walks left out; single people are taken as 30 % off, a choice.
 *
 * <p>From a PAL alone it is estimated, a choice of this program: 0.9 (PAL - 1.40) x resting energy, 1.40 being a day of sitting and 0.9 what
 * the heat of food leaves. It is as little as nothing below the PAL of a day on the feet with loads, 1.70, and as much as all above 1.1, the least
 * that people live at (Westerterp 2013): nobody can tell work from training there.
 *
 * @param counted whether the eater told training apart
 */
public record NetExercise(Energy least, Energy likely, Energy most, boolean counted) {
    private static final double COUNTED_OFF = 0.30;
    private static final double HEAT_OF_FOOD_LEFT = 0.9;
    private static final double SITTING_PAL = 1.40;
    private static final double LOADS_PAL = 1.70;
    private static final double LEAST_PAL = 1.1;

    /** An average day. */
    public static NetExercise of(PhysicalActivity activity, Energy restingADay) {
        if (activity instanceof Diary diary) {
            return counted(restingADay.times(share(diary)));
        }
        if (activity instanceof ActivityFacts facts) {
            return counted(restingADay.times(facts.trainingShare()));
        }
        double pal = activity.pal();
        return new NetExercise(
                restingADay.times(HEAT_OF_FOOD_LEFT * Math.max(0, pal - LOADS_PAL)),
                restingADay.times(HEAT_OF_FOOD_LEFT * Math.max(0, pal - SITTING_PAL)),
                restingADay.times(Math.max(0, pal - LEAST_PAL)),
                false);
    }

    private static NetExercise counted(Energy likely) {
        return new NetExercise(likely.times(1 - COUNTED_OFF), likely, likely.times(1 + COUNTED_OFF), true);
    }

    /** Net cost of training / resting energy. */
    private static double share(Diary diary) {
        double minutes = diary.isWeek() ? Diary.MINUTES_A_WEEK : Diary.MINUTES_A_DAY;
        return diary.entries().stream()
                .filter(entry -> entry.activity().isTraining())
                .mapToDouble(entry -> (entry.activity().met().doubleValue() - 1) * entry.minutes() / minutes)
                .sum();
    }
}
