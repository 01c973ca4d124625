package batchwright.needs.learning;

import batchwright.needs.Needs;
import batchwright.needs.caution.Caution;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What becomes of a target. */
public sealed interface TargetAdvice {
    /**
     * A step that the person may take.
     *
     * @param holdsKcal what is taken to hold the weight from now on, if it is adopted [kcal/d]
     * @param before needs of today's weight without the step
     * @param after the same with it
     * @param secondCut whether the step before this one went down too, so that this one needs a good look
     */
    record Offer(double holdsKcal, Needs before, Needs after, boolean secondCut) implements TargetAdvice {
        public int fromKcal() {
            return before.target().orElseThrow().energyAimKcal();
        }

        public int toKcal() {
            return after.target().orElseThrow().energyAimKcal();
        }
    }

    /**
     * The target stays.
     *
     * @param until when there may be an offer, where that is known
     */
    record Wait(WaitReason reason, String says, Optional<LocalDate> until) implements TargetAdvice {}

    /** Weight does what a clinician should look at; nothing is offered. */
    record Stop(List<Caution> why) implements TargetAdvice {
        public Stop {
            why = List.copyOf(why);
        }

        /** Whether nobody should be shown any figures. */
        public boolean hidesFigures() {
            return why.stream().anyMatch(Caution::hidesFigures);
        }
    }

    /** For scripts. */
    enum WaitReason {
        TOO_EARLY,
        CHANGED_LATELY,
        SETTLING,
        NEAR_ENOUGH,
        LOGGING_WORSE,
        RECORD_TOO_LOW,
        AT_A_LIMIT
    }
}
