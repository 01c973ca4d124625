package batchwright.needs.dynamics;

import batchwright.needs.evidence.Words;
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
    private static final double ROUNDING = 0.1;

    private final Body body;
    private final SafeEnd end;
    private final BodyState start;

    public SafeLimits(Body body, BodyState start) {
        this.body = body;
        this.end = SafeEnd.of(body);
        this.start = start;
    }

    /** What is not kept, in words; empty when all is well. */
    public Optional<String> broken(BodyState now) {
        if (Words.below(now.fatPercent(), Math.min(end.fatPercent(), start.fatPercent() - ROUNDING))) {
            return Optional.of("body fat would be under " + Words.plain(end.fatPercent()) + " % of weight");
        }
        if (Words.below(bmi(now), Math.min(end.bmi(), bmi(start) - ROUNDING))) {
            return Optional.of("the BMI would be under " + Words.plain(end.bmi()));
        }
        return Optional.empty();
    }

    private double bmi(BodyState state) {
        return body.bmiAt(new Mass(state.weightKg()));
    }
}
