package batchwright.needs.projection;

import batchwright.needs.evidence.Words;
import batchwright.needs.safety.SafeEnd;
import batchwright.person.Body;
import java.util.Optional;

/**
 * Where a projection ends, because it would show what the model was not made for and what a body suffers from: below the least BMI or
 * body fat at the end of a loss. Who starts below one of them may not go further down.
 */
final class SafeLimits {
    private final SafeEnd least;
    private final Body body;
    private final BodyState start;

    SafeLimits(Body body, BodyState start) {
        this.least = SafeEnd.of(body);
        this.body = body;
        this.start = start;
    }

    /** What is not kept, in words; empty when all is well. */
    Optional<String> broken(BodyState now) {
        if (Words.below(now.fatPercent(), Math.min(least.fatPercent(), start.fatPercent()))) {
            return Optional.of("body fat would be under " + Words.plain(least.fatPercent()) + " % of weight");
        }
        if (Words.below(bmi(now), Math.min(least.bmi(), bmi(start)))) {
            return Optional.of("the BMI would be under " + Words.plain(least.bmi()));
        }
        return Optional.empty();
    }

    private double bmi(BodyState state) {
        double metres = body.height().metres();
        return state.weightKg() / (metres * metres);
    }
}
