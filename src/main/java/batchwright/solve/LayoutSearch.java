package batchwright.solve;

import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.PlainCompletion;
import batchwright.solve.mip.SearchResult;
import java.util.Optional;

/**
 * The cheapest plan for one layout of containers over days. First with like days taken together, which is a small model: when
 * nothing is cheap enough there, nothing is; and when its cheapest snacks can be dealt out to the single days, that is the
 * answer. Otherwise with each day on its own.
 */
final class LayoutSearch {
    private final DaysDraft together;
    private final DraftMaker maker;
    private final Effort effort;

    /** Makes the complete model for a layout: rules and aim. */
    interface DraftMaker {
        DaysDraft make(Layout layout);
    }

    LayoutSearch(Layout layout, DraftMaker maker, Effort effort) {
        this.together = maker.make(layout);
        this.maker = maker;
        this.effort = effort;
    }

    /** The cheapest plan below the cutoff, if there is one. */
    Optional<Found<DaysSolution>> cheapest(double cutoff) {
        var dealOut = new DealOut(together);
        var like = search(together, new PlainCompletion(together.model()), cutoff);
        if (like.best().isEmpty() && like.state() == SearchResult.State.DONE) {
            return Optional.empty();
        }
        Optional<DaysSolution> dealt = like.best().flatMap(dealOut::deal);
        if (dealt.isPresent()) {
            return Optional.of(new Found<>(like.cost(), dealt.get()));
        }
        DaysDraft singly = maker.make(together.layout().singly());
        var single = search(singly, new DealtSingly(singly), cutoff);
        return single.best().map(best -> new Found<>(single.cost(), best));
    }

    private <S> SearchResult<S> search(DaysDraft draft, Completion<S> completion, double cutoff) {
        var result = new BranchAndBound<>(draft.model(), completion, cutoff, effort::mustStop).search();
        effort.finished(result);
        return result;
    }

    /** Completion of a model in which every day stands on its own. */
    private static final class DealtSingly implements Completion<DaysSolution> {
        private final DaysDraft draft;
        private final DealOut dealOut;
        private final PlainCompletion plain;

        DealtSingly(DaysDraft draft) {
            this.draft = draft;
            this.dealOut = new DealOut(draft);
            this.plain = new PlainCompletion(draft.model());
        }

        @Override
        public Verdict<DaysSolution> complete(
                double[] values, double[] lower, double[] upper, double bound, double cutoff) {
            double[] x = plain.rounded(values);
            Optional<DaysSolution> solution = dealOut.deal(x);
            return solution.isPresent()
                    ? Verdict.closed(draft.model().costOf(x), solution.get())
                    : new Verdict<>(Optional.empty(), plain.othersThan(values, lower, upper));
        }
    }
}
