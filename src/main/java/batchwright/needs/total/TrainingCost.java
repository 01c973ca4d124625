package batchwright.needs.total;

import batchwright.person.Activity;
import batchwright.person.Diary;
import batchwright.quantity.Energy;
import java.util.Optional;
import java.util.Set;

/**
 * What training takes of a day beyond rest (its net cost), from a diary: resting energy / 24 x (METs - 1) for each hour, the same
 * reading of a MET that the total rests on. Other ways to say how active a day is do not tell training apart.
 *
 * <p>Training is what the Compendium lists under bicycling, conditioning exercise, running, sports and water activities
 * (headings from memory, not seen); walking is not. That is a choice.
 */
public final class TrainingCost {
    private static final Set<String> HEADINGS = Set.of("01", "02", "12", "15", "18");
    private static final int HEADING_DIGITS = 2;
    private static final double REST_METS = 1;

    private TrainingCost() {}

    /** A day on the average; empty when the activity does not tell training apart. */
    public static Optional<Energy> of(Activity activity, Energy restingADay) {
        return activity instanceof Diary diary ? Optional.of(restingADay.times(share(diary))) : Optional.empty();
    }

    /** Net cost of training / resting energy. */
    private static double share(Diary diary) {
        double minutes = diary.isWeek() ? Diary.MINUTES_A_WEEK : Diary.MINUTES_A_DAY;
        return diary.entries().stream()
                .filter(TrainingCost::isTraining)
                .mapToDouble(entry -> (entry.activity().met().doubleValue() - REST_METS) * entry.minutes() / minutes)
                .sum();
    }

    private static boolean isTraining(Diary.Entry entry) {
        return HEADINGS.contains(entry.activity().code().substring(0, HEADING_DIGITS));
    }
}
