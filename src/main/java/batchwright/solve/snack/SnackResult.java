package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What a search came to. That no snack does what was asked is a result, not an error. */
public sealed interface SnackResult {

    /** One method for each outcome, so that no caller forgets one. */
    interface Cases<R> {
        R found(Found found);

        R notReachable(NotReachable notReachable);
    }

    <R> R match(Cases<R> cases);

    /**
     * There are snacks that do what was asked.
     *
     * @param answers best first, all different, at least one. None of them has a piece to spare: drop any piece and it
     *     no longer does what was asked.
     */
    record Found(List<SnackAnswer> answers) implements SnackResult {
        public Found {
            answers = List.copyOf(answers);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.found(this);
        }
    }

    /** The side on which the ask fails. */
    enum Missing {
        /** All that kinds and budget allow has too little energy. */
        ENERGY,
        /** Snacks have less energy than the least or more than the most; none lands between. */
        WINDOW,
        /** Energy can be reached within all limits, but not together with the protein. */
        PROTEIN
    }

    /**
     * No snack does what was asked.
     *
     * @param missing the side that fails
     * @param closest the snack that comes closest within kinds, budget and most energy. Protein missing: of the snacks
     *     with enough energy, the one with most protein. Otherwise the one with most energy, whatever its protein.
     * @param kcalShort energy [kcal] that snack lacks, at least 0
     * @param proteinShortG protein [g] that snack lacks, at least 0
     * @param over the snack of least energy that does all that was asked but for the most energy; empty when there is
     *     none
     */
    record NotReachable(
            Missing missing,
            SnackAnswer closest,
            BigDecimal kcalShort,
            BigDecimal proteinShortG,
            Optional<SnackAnswer> over)
            implements SnackResult {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notReachable(this);
        }
    }
}
