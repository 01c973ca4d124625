package batchwright.plan;

import batchwright.quantity.Money;
import java.util.Optional;

/**
 * What a solver of another family says of an answer. It is believed only where it was checked: a point that keeps every row of
 * the model, a bound that its multipliers prove.
 *
 * @param solver name and version
 * @param verdict whether that goes together with the answer
 * @param sameDishes the least cost of all plans of the same dishes, as that solver has it when it was done
 * @param found cost of the cheapest plan that it found and that was checked
 * @param bound no plan costs less, as its multipliers prove; without a plan none is known
 */
public record SecondOpinion(
        String solver, Verdict verdict, Optional<Money> sameDishes, Optional<Money> found, Optional<Money> bound) {
    /** How two solvers compare. */
    public enum Verdict {
        /** It found the same. */
        AGREES,
        /** Nothing contradicts, but it was not done in the time it had. */
        NOT_FINISHED,
        /** One of the two is wrong. */
        DISAGREES
    }
}
