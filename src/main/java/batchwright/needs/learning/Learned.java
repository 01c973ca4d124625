package batchwright.needs.learning;

import batchwright.needs.Needs;
import batchwright.needs.caution.Caution;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.Prior;
import batchwright.needs.weighing.WeighedDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What an eater's own weighings say, and what follows for the target.
 *
 * @param needs by the equation
 * @param told what to know besides
 */
public record Learned(Needs needs, Expenditure seen, TargetAdvice advice, List<TargetStep> steps, List<Caution> told) {
    public Learned {
        steps = List.copyOf(steps);
        told = List.copyOf(told);
    }

    /**
     * Empty when nothing was weighed, or when needs refuse a target: who gets no figures there gets none here.
     *
     * @param needs by the equation, without what was adopted
     * @param days each date once, the earliest first, none after today
     * @param steps adopted before, the earliest first
     */
    public static Optional<Learned> of(Needs needs, List<WeighedDay> days, List<TargetStep> steps, LocalDate today) {
        if (needs.stopsPlanning() || needs.hidesFigures()) {
            return Optional.empty();
        }
        return Expenditure.of(Prior.of(needs), days)
                .map(seen -> new Learned(
                        needs,
                        seen,
                        CarefulTarget.advise(needs, seen, steps, today),
                        steps,
                        WeightSigns.told(needs, seen)));
    }

    /** Whether nobody should be shown any figures. */
    public boolean hidesFigures() {
        return advice instanceof TargetAdvice.Stop stop && stop.hidesFigures();
    }
}
