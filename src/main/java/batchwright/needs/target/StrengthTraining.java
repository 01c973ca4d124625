package batchwright.needs.target;

import batchwright.person.ActivityFacts;
import batchwright.person.Diary;
import batchwright.person.Eater;
import batchwright.person.PhysicalActivity;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far the eater counts as somebody who trains with weights: from 0, not at all, to 1 from two times a week on, the least that WHO (2020)
 * advises for muscle (from memory). Between them it is even, a choice. Where the profile does not say it, two hours a week of weights
 * or the like in the facts or the diary of the eater say it, or that there is any experience.
 */
final class StrengthTraining {
    private static final double ENOUGH_TIMES = 2;
    private static final double ENOUGH_MINUTES = 120;

    private StrengthTraining() {}

    /** 0 to 1; empty when nothing is known of it. */
    static OptionalDouble of(Eater eater) {
        var said = eater.training().timesAWeek();
        if (said.isPresent()) {
            return OptionalDouble.of(Math.min(1, said.get() / ENOUGH_TIMES));
        }
        double minutes = minutesAWeek(eater.activity());
        if (minutes > 0) {
            return OptionalDouble.of(Math.min(1, minutes / ENOUGH_MINUTES));
        }
        return eater.experience().isPresent() ? OptionalDouble.of(1) : OptionalDouble.empty();
    }

    private static double minutesAWeek(PhysicalActivity activity) {
        if (activity instanceof ActivityFacts facts) {
            return strength(facts.training());
        }
        if (activity instanceof Diary diary) {
            return strength(diary.entries()) * (diary.isWeek() ? 1 : Diary.MINUTES_A_WEEK / Diary.MINUTES_A_DAY);
        }
        return 0;
    }

    private static double strength(List<Diary.Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.activity().isStrength())
                .mapToInt(Diary.Entry::minutes)
                .sum();
    }
}
