package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Body;
import batchwright.person.Eater;
import java.util.OptionalDouble;

/**
 * How much protein the evidence gives an eater, before the share of energy is looked at [g per kg of {@link ReferenceWeight}].
 *
 * <ul>
 *   <li>Not training: 0.83-1.2 (safe level of WHO/FAO/UNU 2007; PROT-AGE 2013), losing 1.2-1.6 (JISSN 2025, a deficit: 1.2-2.0).
 *   <li>Training with weights: 1.4-1.62 (ISSN 2017: 1.4-2.0; Morton et al. 2018: no further gain above 1.62), losing 1.6-2.0, or up to 2.3 g for
 *       each kg of fat-free mass where it is known (Helms et al. 2014).
 *   <li>From 65 years at least 1.0 (PROT-AGE 2013, ESPEN 2014).
 * </ul>
 *
 * <p>How the ranges meet is a choice of this program: even in age from 60 to 65 years, in loss from 0 to 0.5 % of weight a week, and in how
 * much the eater trains. Where training is not said, the range reaches from the least without to the most with it.
 *
 * @param mostIsFor who the upper end is for
 */
record ProteinRange(double leastGPerKg, double mostGPerKg, String mostIsFor, Citation source) {
    private record Ends(double least, double most) {
        Ends towards(Ends other, double share) {
            return new Ends(least + share * (other.least - least), most + share * (other.most - most));
        }
    }

    private static final Ends RESTING_HOLD = new Ends(0.83, 1.2);
    private static final Ends OLDER_HOLD = new Ends(1.0, 1.2);
    private static final Ends RESTING_LOSE = new Ends(1.2, 1.6);
    private static final Ends TRAINING_HOLD = new Ends(1.4, 1.62);
    private static final double TRAINING_LOSE_LEAST = 1.6;
    private static final double TRAINING_LOSE_MOST = 2.0;
    private static final double TRAINING_LOSE_MOST_FAT_FREE = 2.3; // per kg of fat-free mass
    private static final double OLDER_FROM_YEARS = 60;
    private static final double OLDER_TO_YEARS = 65;
    private static final double LOSS_PERCENT_A_WEEK = 0.5;

    private static final Citation NOT_TRAINING =
            new Citation("WHO/FAO/UNU 2007, 0.83 g per kg; PROT-AGE 2013; losing: range of JISSN 2025");
    private static final Citation TRAINING = new Citation(
            "ISSN position 2017, 1.4-2.0; Morton et al. 2018, 1.62; losing: Helms et al. 2014, 2.3 per kg fat-free");

    static ProteinRange of(Eater eater, WeeklyChange change) {
        Body body = eater.body();
        double losing = between(0, LOSS_PERCENT_A_WEEK, -change.percentAWeek());
        double old = between(OLDER_FROM_YEARS, OLDER_TO_YEARS, body.ageYears());
        Ends without = RESTING_HOLD.towards(OLDER_HOLD, old).towards(RESTING_LOSE, losing);
        Ends with = TRAINING_HOLD.towards(new Ends(TRAINING_LOSE_LEAST, mostWhenTraining(body)), losing);
        OptionalDouble training = StrengthTraining.of(eater);
        if (training.isEmpty()) {
            return new ProteinRange(
                    without.least, with.most, "people who train with weights (the profile does not say)", NOT_TRAINING);
        }
        Ends both = without.towards(with, training.getAsDouble());
        return new ProteinRange(
                both.least,
                both.most,
                training.getAsDouble() > 0 ? "people who train with weights" : "people who do not train with weights",
                training.getAsDouble() > 0 ? TRAINING : NOT_TRAINING);
    }

    private static double mostWhenTraining(Body body) {
        return body.fatFreeMass()
                .filter(fatFree -> body.fatTellsMoreThanBmi())
                .map(fatFree -> TRAINING_LOSE_MOST_FAT_FREE * fatFree.kg() / ReferenceWeight.kg(body))
                .map(perKg -> Math.max(TRAINING_LOSE_LEAST, perKg))
                .orElse(TRAINING_LOSE_MOST);
    }

    /** 0 at the first end, 1 at the second, linear in between. */
    private static double between(double first, double second, double value) {
        return Math.max(0, Math.min(1, (value - first) / (second - first)));
    }
}
