package batchwright.solve;

import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.PlainCompletion;
import batchwright.solve.mip.SearchResult;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cheapest plan for one layout of containers over days. Like days are taken together, which makes the model small: when
 * nothing is cheap enough there, nothing is; and when the snacks can be dealt out to the single days, that is the answer. Where
 * the days of a group cannot be served too often, that group is taken apart, and the search starts anew with a finer model; at
 * the finest, each day stands on its own.
 */
final class LayoutSearch {
    private static final long STEPS_WITH_PACKS = 60;

    private final Layout layout;
    private final DraftMaker maker;
    private final Effort effort;

    /** Makes the complete model for a layout: rules and aim. */
    interface DraftMaker {
        DaysDraft make(Layout layout);

        /** Any plan with just these packs, in the order of the menu; empty where packs are not all that is aimed at. */
        Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs);
    }

    LayoutSearch(Layout layout, DraftMaker maker, Effort effort) {
        this.layout = layout;
        this.maker = maker;
        this.effort = effort;
    }

    /** A plan below the cutoff, if one is found soon. */
    Look glimpse(double cutoff) {
        return search(layout, cutoff);
    }

    /** The cheapest plan below the cutoff, if there is one; done unless it was told to stop. */
    Look cheapest(double cutoff) {
        Layout finer = layout;
        Optional<Found<DaysSolution>> best = Optional.empty();
        double below = cutoff;
        while (true) {
            Look look = search(finer, below);
            if (look.found().isPresent()) {
                best = look.found();
                below = best.get().cost();
            }
            Optional<Failure> worst = look.worst();
            if (look.done() || worst.isEmpty()) {
                return new Look(best, look.done(), Optional.empty());
            }
            finer = finer.halved(worst.get().seat(), worst.get().group());
        }
    }

    /**
     * What one model led to.
     *
     * @param done nothing but {@code found} costs less than the cutoff
     * @param worst the days that could not be served most often, if that was why the search stopped
     */
    record Look(Optional<Found<DaysSolution>> found, boolean done, Optional<Failure> worst) {}

    record Failure(Seat seat, LikeDays group) {}

    private Look search(Layout finer, double cutoff) {
        DaysDraft draft = maker.make(finer);
        var dealing = new Dealing(draft);
        var result = new BranchAndBound<>(
                        draft.model(), dealing, cutoff, () -> dealing.failedEnough() || effort.mustStop())
                .search();
        effort.count(result);
        return new Look(
                result.best().map(best -> new Found<>(result.cost(), best)),
                result.state() == SearchResult.State.DONE,
                dealing.failedEnough() ? dealing.worst() : Optional.empty());
    }

    /** Any plan with these packs, each day on its own; empty when there is none or it was not found soon. */
    private Optional<DaysSolution> withPacks(DaysDraft draft, List<Integer> packs) {
        return maker.withPacks(draft.layout().singly(), packs).flatMap(single -> {
            Effort little = effort.limited(STEPS_WITH_PACKS);
            var result = new BranchAndBound<>(
                            single.model(), new Dealing(single), Double.POSITIVE_INFINITY, little::mustStop)
                    .search();
            effort.count(result);
            return result.best();
        });
    }

    /**
     * Completion: deals the snacks out to the single days. When they cannot be, it keeps the packs, which alone make the cost,
     * and looks for other portions and snacks; and when there are none, it looks elsewhere.
     */
    private final class Dealing implements Completion<DaysSolution> {
        private static final int MOST_FAILURES = 10;

        private final DaysDraft draft;
        private final DealOut dealOut;
        private final PlainCompletion plain;
        private final List<Column> packs;
        private final Map<Failure, Integer> failures = new LinkedHashMap<>();
        private final Map<List<Integer>, Optional<DaysSolution>> tried = new HashMap<>();

        Dealing(DaysDraft draft) {
            this.draft = draft;
            this.dealOut =
                    new DealOut(draft, (seat, group) -> failures.merge(new Failure(seat, group), 1, Integer::sum));
            this.plain = new PlainCompletion(draft.model());
            this.packs = draft.menu().packs().stream().map(draft::packs).toList();
        }

        /** So many sums could not be dealt out that some days had better be taken apart. Single days never count. */
        boolean failedEnough() {
            return worst().map(f -> failures.getOrDefault(f, 0) > MOST_FAILURES).orElse(false);
        }

        Optional<Failure> worst() {
            return failures.entrySet().stream()
                    .filter(e -> e.getKey().group().days().size() > 1)
                    .max(Comparator.comparingInt(Map.Entry::getValue))
                    .map(Map.Entry::getKey);
        }

        @Override
        public Verdict<DaysSolution> complete(Point point, double cutoff) {
            double[] x = plain.rounded(point.values());
            Optional<DaysSolution> solution = dealOut.deal(x);
            if (solution.isEmpty() && !draft.layout().isSingly()) {
                List<Integer> bought =
                        packs.stream().map(c -> (int) x[c.index()]).toList();
                solution = tried.computeIfAbsent(bought, b -> withPacks(draft, b));
            }
            return solution.isPresent()
                    ? Verdict.closed(draft.model().costOf(x), solution.get())
                    : new Verdict<>(Optional.empty(), plain.othersThan(point));
        }
    }
}
