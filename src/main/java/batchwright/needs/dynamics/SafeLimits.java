package batchwright.needs.dynamics;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.safety.SafeEnd;
import batchwright.person.Body;
import batchwright.quantity.Mass;
import java.util.Optional;

/**
 * Where a body is followed no further, because it would show what the model was not made for and what a body suffers from: under the
 * body fat or the BMI where a loss has to end ({@link SafeEnd}). Who starts below one of them may not go further down.
 */
public final class SafeLimits {
    /** Points of fat and of BMI: an intake in whole kcal does not hold a weight to the gram. */
    private static final double ROUNDING = 0.03;

    private final Body body;
    private final SafeEnd end;
    private final BodyState start;

    public SafeLimits(Body body, BodyState start) {
        this.body = body;
        this.end = SafeEnd.of(body);
        this.start = start;
    }

    /** The limit that is not kept, in words; empty when all is well. */
    public Optional<String> broken(BodyState now) {
        if (isUnder(now.fatPercent(), end.fatPercent(), start.fatPercent())) {
            return Optional.of(says("body fat", end.fatPercent(), " % of weight", start.fatPercent()));
        }
        if (isUnder(bmi(now), end.bmi(), bmi(start))) {
            return Optional.of(says("the BMI", end.bmi(), "", bmi(start)));
        }
        return Optional.empty();
    }

    private static boolean isUnder(double now, double limit, double start) {
        return Numerals.below(now, Math.min(limit, start - ROUNDING));
    }

    private static String says(String what, double limit, String unit, double start) {
        String under = "under " + Numerals.plain(limit) + unit;
        return Numerals.below(start, limit)
                ? what + ", " + under + " already, would fall further"
                : what + " would be " + under;
    }

    private double bmi(BodyState state) {
        return body.bmiAt(new Mass(state.weightKg()));
    }
}
