package batchwright.solve;

import batchwright.food.Pack;
import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.PlainCompletion;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.StepBudget;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The cheapest plan for one layout of containers over days. Like days are taken together, which makes the model small: when
 * nothing is cheap enough there, nothing is; when the snacks can be dealt out to the single days, that is the answer. Where
 * the days of a group cannot be served too often, that group is taken apart, and the search starts anew with a finer model; at
 * the finest, each day stands on its own.
 */
final class LayoutSearch {
    private static final long STEPS_WITH_PACKS = 60;

    private final DraftMaker maker;
    private final Effort effort;
    private final StepBudget budget = StepBudget.unlimited();
    private final TimeSlices slices = new TimeSlices(budget, 1);
    private double bound = Double.NEGATIVE_INFINITY;
    private Layout layout;
    private Optional<Run> run = Optional.empty();

    /** Makes the complete model for a layout: rules and aim. */
    interface DraftMaker {
        DaysDraft make(Layout layout);

        /** Any plan with just these packs, in the order of the menu; empty where packs are not all that is aimed at. */
        Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs);
    }

    LayoutSearch(Layout layout, DraftMaker maker, Effort effort) {
        this.layout = layout;
        this.maker = maker;
        this.effort = effort.within(budget);
    }

    /**
     * What became of the search.
     *
     * @param found the cheapest plan below the cutoff that was found in this call
     * @param done nothing but what was found costs less than the cutoff
     */
    record LayoutResult(Optional<Found<DaysSolution>> found, boolean done) {}

    /** No plan for this layout costs less, as far as is known. */
    double bound() {
        return bound;
    }

    /** A heuristic: a plan below the cutoff, if one is found soon; not to be resumed. */
    Optional<Found<DaysSolution>> heuristic(double cutoff) {
        return new Run(maker.make(layout), cutoff).search(cutoff).found();
    }

    /** The cheapest plan below the cutoff, if there is one. Asked again, it goes on from where it was told to stop. */
    LayoutResult cheapest(double cutoff) {
        return search(cutoff);
    }

    /** As {@link #cheapest}, for one slice; each may take twice as many steps as the one before. */
    LayoutResult runSlice(double cutoff) {
        slices.begin();
        return search(cutoff);
    }

    private LayoutResult search(double cutoff) {
        Optional<Found<DaysSolution>> best = Optional.empty();
        while (true) {
            double below = best.map(Found::cost).orElse(cutoff);
            Run current = run.orElseGet(() -> new Run(maker.make(layout), below));
            run = Optional.of(current);
            LayoutResult look = current.search(below);
            if (look.found().isPresent()) {
                best = look.found();
            }
            Optional<Failure> worst = current.failedTooOften();
            if (look.done() || worst.isEmpty()) {
                return new LayoutResult(best, look.done());
            }
            layout = layout.halved(worst.get().seat(), worst.get().group());
            run = Optional.empty();
        }
    }

    private record Failure(Seat seat, LikeDays group) {}

    /** The search in one model: a layout with days taken together as they are now. */
    private final class Run {
        private final Dealing dealing;
        private final BranchAndBound<DaysSolution> search;
        private long counted;

        Run(DaysDraft draft, double cutoff) {
            this.dealing = new Dealing(draft);
            this.search = BranchAndBound.withCuts(draft.model(), dealing, cutoff, effort.or(dealing::failedEnough));
        }

        LayoutResult search(double cutoff) {
            search.lowerCutoff(cutoff);
            var result = search.search();
            effort.count(result.nodes() - counted);
            counted = result.nodes();
            bound = Math.max(bound, result.bound());
            return new LayoutResult(
                    result.best().map(best -> new Found<>(result.cost(), best)).filter(found -> found.cost() < cutoff),
                    result.state() == SearchResult.State.DONE);
        }

        /** The days that could not be served most often, if that was why the search stopped. */
        Optional<Failure> failedTooOften() {
            return dealing.failedEnough() ? dealing.worst() : Optional.empty();
        }
    }

    /** Any plan with these packs, each day on its own; empty when there is none or it was not found soon. */
    private Optional<DaysSolution> withPacks(DaysDraft draft, List<Integer> packs) {
        return maker.withPacks(draft.layout().singly(), packs).flatMap(single -> {
            Effort little = effort.limited(STEPS_WITH_PACKS);
            var result = new BranchAndBound<>(single.model(), new Dealing(single), Double.POSITIVE_INFINITY, little)
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
        private static final int MOST_FAILURES = 0;

        private final DaysDraft draft;
        private final DealOut dealOut;
        private final PlainCompletion plain;
        private final List<Column> packs;
        private final List<Column> dearestFirst;
        private final Map<Failure, Integer> failures = new LinkedHashMap<>();
        private final Map<List<Integer>, Optional<DaysSolution>> tried = new HashMap<>();

        Dealing(DaysDraft draft) {
            this.draft = draft;
            this.dealOut = new DealOut(
                    draft, (seat, group) -> failures.merge(new Failure(seat, group), 1, Integer::sum), effort);
            this.plain = new PlainCompletion(draft.model());
            this.packs = draft.menu().packs().stream().map(draft::packs).toList();
            this.dearestFirst = Stream.concat(
                            draft.menu().packs().stream()
                                    .sorted(Comparator.comparing(Pack::price).reversed())
                                    .map(draft::packs),
                            draft.shops().values().stream())
                    .toList();
        }

        /** So many sums could not be dealt out that some days are better taken apart. Single days never count. */
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
            // A search that was cut short may have bought more than it needs.
            double[] x = plain.trimmed(plain.rounded(point.values()), dearestFirst);
            Optional<DaysSolution> solution = dealOut.deal(x);
            if (solution.isEmpty() && !draft.layout().isSingly()) {
                List<Integer> bought =
                        packs.stream().map(c -> (int) x[c.index()]).toList();
                solution = tried.computeIfAbsent(bought, b -> withPacks(draft, b));
            }
            return solution.isPresent()
                    ? Verdict.closed(draft.model().costOf(x), solution.get())
                    : new Verdict<>(
                            Optional.empty(),
                            plain.keepsAll(x) ? plain.othersThan(point) : plain.brokenByRounding(point));
        }
    }
}
