package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Portion;
import batchwright.plan.Seat;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans known from before, made for another request perhaps, as plans of this one: the same grams in the same containers on the same
 * days and the same snacks; packs are chosen anew. Whether a plan keeps the rules of this request, its model decides.
 */
final class KnownPlans {
    /** Nodes spent on choosing the packs of a plan. */
    private static final long STEPS = 30;

    private final PlanRequest request;
    private final Menu menu;
    private final Effort effort;

    KnownPlans(PlanRequest request, Effort effort) {
        this.request = request;
        this.menu = new Menu(request);
        this.effort = effort;
    }

    /** The cheapest of those that keep the rules. */
    Optional<Found<DaysSolution>> cheapest(List<Plan> plans) {
        Optional<Found<DaysSolution>> best = Optional.empty();
        for (Plan plan : plans) {
            double cutoff = best.map(Found::cost).orElse(Double.POSITIVE_INFINITY);
            Optional<Found<DaysSolution>> known = plan.isCookedOnce() ? asItIs(plan.first(), cutoff) : Optional.empty();
            best = known.isPresent() ? known : best;
        }
        return best;
    }

    private Optional<Found<DaysSolution>> asItIs(Session session, double cutoff) {
        Effort little = effort.limited(STEPS);
        var models = new LayoutModels(request, menu, Aim.LEAST_COST, Depth.THOROUGH, little);
        try {
            Optional<Found<DaysSolution>> found = new KnownLayout(request, menu, session)
                    .asItIs()
                    .flatMap(layout ->
                            new LayoutSearch(layout.singly(), new Fixed(models, session), little).heuristic(cutoff));
            found.ifPresent(effort::found);
            return found;
        } catch (OutOfTime over) {
            return Optional.empty();
        }
    }

    /** Models in which grams and snacks are those of a session. */
    private record Fixed(LayoutModels models, Session session) implements LayoutSearch.DraftMaker {
        @Override
        public DaysDraft make(Layout layout) {
            DaysDraft draft = models.make(layout);
            draft.request().seats().forEach(seat -> {
                Lookup.get(layout.containers(), seat).keySet().forEach(dish -> keepGrams(draft, seat, dish));
                OthersStay.keepSnacks(draft, seat, snacks(seat));
            });
            return draft;
        }

        private void keepGrams(DaysDraft draft, Seat seat, Dish dish) {
            for (Portion portion : session.fill(dish, seat.eater()).portions()) {
                dish.parts().stream()
                        .filter(part -> part.name().equals(portion.part().name()))
                        .forEach(part -> OthersStay.keep(
                                draft,
                                draft.stepsColumn(seat, dish, part),
                                (double) portion.rawGrams() / part.stepGrams()));
            }
        }

        private Map<Integer, List<Snack>> snacks(Seat seat) {
            Map<Integer, List<Snack>> snacks = new LinkedHashMap<>();
            session.eaters().stream()
                    .filter(mine -> mine.seat().eater().equals(seat.eater()))
                    .map(EaterDays::days)
                    .forEach(days -> days.forEach(day -> snacks.put(day.day(), day.snacks())));
            return snacks;
        }

        @Override
        public Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs) {
            return Optional.empty();
        }
    }
}
