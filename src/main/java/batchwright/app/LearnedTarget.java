package batchwright.app;

import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetAdvice;
import batchwright.needs.learning.TargetStep;
import batchwright.needs.weighing.WeighedDay;
import batchwright.person.Eater;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What do my weighings say of my target? Reads what is recorded through {@link Records}, and writes one line when it is adopted. */
public final class LearnedTarget {
    /** What is recorded of an eater, and where a step is written. */
    public interface Records {
        /** Each date once, the earliest first, none after today. */
        List<WeighedDay> days(String eater);

        /** The earliest first. */
        List<TargetStep> adopted(String eater);

        /** Writes one line. */
        void adopt(String eater, TargetStep step);
    }

    private final Records records;
    private final LocalDate today;

    public LearnedTarget(Records records, LocalDate today) {
        this.records = records;
        this.today = today;
    }

    /** Needs with what was adopted last; by the equation when nothing was, or when they refuse a target. */
    public Needs needs(Eater eater) {
        Needs byEquation = NeedsCalculator.needsOf(eater);
        List<TargetStep> steps = records.adopted(eater.id());
        return steps.isEmpty() || byEquation.stopsPlanning()
                ? byEquation
                : NeedsCalculator.needsOf(steps.get(steps.size() - 1).in(eater));
    }

    /** Empty when nothing was weighed, or when needs refuse a target. */
    public Optional<Learned> answer(Eater eater) {
        return Learned.of(NeedsCalculator.needsOf(eater), records.days(eater.id()), records.adopted(eater.id()), today);
    }

    /**
     * Takes the step that is offered.
     *
     * @throws Refused when none is
     */
    public TargetStep adopt(Eater eater) {
        if (answer(eater).map(Learned::advice).orElse(null) instanceof TargetAdvice.Offer offer) {
            var step = new TargetStep(today, offer.holdsKcal());
            records.adopt(eater.id(), step);
            return step;
        }
        throw Refused.because(
                "there is no step to adopt for " + eater.id(), "Its needs say why, and from when there may be one.");
    }
}
