package batchwright.needs.dynamics;

import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.person.Sex;
import java.util.Optional;

/**
 * Where a body is followed no further, because it would show what the model was not made for and what a body suffers from: body fat under 5 %
 * (men) or 12 % (women) of weight, or BMI under 18.5. All three are choices of this program; the last is the lower end of the WHO's
 * normal range. Who starts below one of them may not go further down.
 */
public final class SafeLimits {
    private static final double FAT_PERCENT_MALE = 5;
    private static final double FAT_PERCENT_FEMALE = 12;
    private static final double BMI = 18.5;
    /** Points of fat and of BMI: an intake in whole kcal does not hold a weight to the gram. */
    private static final double ROUNDING = 0.1;

    private final Body body;
    private final BodyState start;

    public SafeLimits(Body body, BodyState start) {
        this.body = body;
        this.start = start;
    }

    /** What is not kept, in words; empty when all is well. */
    public Optional<String> broken(BodyState now) {
        double fatLeast = body.sex() == Sex.MALE ? FAT_PERCENT_MALE : FAT_PERCENT_FEMALE;
        if (Words.below(now.fatPercent(), Math.min(fatLeast, start.fatPercent() - ROUNDING))) {
            return Optional.of("body fat would be under " + Words.plain(fatLeast) + " % of weight");
        }
        if (Words.below(bmi(now), Math.min(BMI, bmi(start) - ROUNDING))) {
            return Optional.of("the BMI would be under " + Words.plain(BMI));
        }
        return Optional.empty();
    }

    private double bmi(BodyState state) {
        double metres = body.height().metres();
        return state.weightKg() / (metres * metres);
    }
}
