package batchwright.explain;

import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import batchwright.plan.Remedy;
import java.util.List;
import java.util.Optional;

/**
 * The smallest change of one rule alone that makes a plan possible, every other rule being kept. Where no such change does it
 * within the budget, a larger budget may be needed besides.
 *
 * @param found what to loosen, by how many units; empty when none is known
 * @param raised the budget that is needed besides
 * @param certain whether it is known that nothing less does
 */
record Cure(SoftRule softRule, Optional<Loosened> found, Optional<Raised> raised, boolean certain) {
    private static final String NOT_FOUND = "not found";

    /** A loosening by so many units. */
    record Loosened(Loosening loosening, int units) {
        PlanRequest applied(PlanRequest request) {
            return loosening.loosen().by(request, units);
        }
    }

    /** Nothing is changed of the rule. */
    static Cure none(SoftRule softRule) {
        return new Cure(softRule, Optional.empty(), Optional.empty(), true);
    }

    /** Within the budget of the request, if it has one. Of several loosenings that help, the one with the fewest units; the first of these. */
    static Cure of(SoftRule softRule, PlanRequest request, Oracle oracle) {
        if (!softRule.canBeChanged()) {
            return new Cure(softRule, Optional.empty(), Optional.empty(), true);
        }
        boolean certain = true;
        if (softRule.droppable()
                && softRule.ways().size() > 1
                && oracle.shareOf(2).ask(softRule.dropped().apply(request)) == Possible.NO) {
            return new Cure(softRule, Optional.empty(), Optional.empty(), true);
        }
        for (List<Loosening> tier : softRule.loosenings()) {
            Optional<Loosened> best = Optional.empty();
            for (Loosening loosening : tier) {
                int below = best.map(s -> s.units() - 1).orElse(loosening.reach());
                var search = new ExponentialSearch(loosening, request, oracle, Math.min(below, loosening.reach()));
                Optional<Loosened> found = search.least();
                certain &= search.certain();
                best = found.isPresent() ? found : best;
            }
            if (best.isPresent()) {
                return new Cure(softRule, best, Optional.empty(), certain);
            }
        }
        return new Cure(softRule, Optional.empty(), Optional.empty(), certain);
    }

    /** For a request without a plan at any cost: within its budget if a change of the rule alone does that, else with a larger one. */
    static Cure atAnyCost(SoftRule softRule, PlanRequest request, Oracle oracle) {
        if (request.budget().isEmpty()) {
            return of(softRule, request, oracle);
        }
        Cure any = of(softRule, request.withBudget(Optional.empty()), oracle.shareOf(2));
        if (any.found().isEmpty()) {
            return any;
        }
        Loosened loosened = any.found().get();
        if (oracle.ask(loosened.applied(request)) == Possible.YES) {
            return any;
        }
        Cure within = of(softRule, request, oracle.shareOf(2));
        if (within.found().isPresent()) {
            return within;
        }
        var raised = new Raised(
                oracle.cost(loosened.applied(request)), request.kitchen().currency());
        return new Cure(
                softRule, any.found(), Optional.of(raised), any.certain() && within.certain() && raised.certain());
    }

    /** The request with all that the cure changes; the same request when none is known. */
    PlanRequest applied(PlanRequest request) {
        PlanRequest changed = found.map(loosened -> loosened.applied(request)).orElse(request);
        return raised.map(r -> r.applied(changed)).orElse(changed);
    }

    /** @param needed whether it is proven that the other rules of the set can all hold */
    Clash clash(boolean needed) {
        if (found.isEmpty()) {
            return certain
                    ? softRule.clash("", softRule.instead(), needed)
                    : softRule.clash(NOT_FOUND, Optional.empty(), needed);
        }
        Loosened loosened = found.get();
        String change = loosened.loosening().cure().apply(loosened.units());
        String cure = raised.map(r -> r.cure(change)).orElse(change);
        Remedy remedy = loosened.loosening().remedy().apply(loosened.units());
        return softRule.clash(
                certain ? cure : cure + "; a smaller change may do, but none was found",
                Optional.of(raised.map(r -> r.besides(remedy)).orElse(remedy)),
                needed);
    }

    /** Larger and larger steps until a plan is possible, then halves the last step. */
    private static final class ExponentialSearch {
        private static final int GROWTH = 8;

        private final Loosening loosening;
        private final PlanRequest request;
        private final Oracle oracle;
        private final int most;
        private boolean certain = true;

        ExponentialSearch(Loosening loosening, PlanRequest request, Oracle oracle, int most) {
            this.loosening = loosening;
            this.request = request;
            this.oracle = oracle;
            this.most = most;
        }

        boolean certain() {
            return certain;
        }

        /** The most comes first: where that is not enough nothing is, and where it is there is a cure in any case. */
        Optional<Loosened> least() {
            if (most == 0 || !possible(most)) {
                return Optional.empty();
            }
            int tooLittle = 0;
            int enough = most;
            for (int step = GROWTH; tooLittle + step < enough; step *= GROWTH) {
                if (possible(tooLittle + step)) {
                    enough = tooLittle + step;
                } else {
                    tooLittle += step;
                }
            }
            while (enough - tooLittle > 1) {
                int middle = tooLittle + (enough - tooLittle) / 2;
                if (possible(middle)) {
                    enough = middle;
                } else {
                    tooLittle = middle;
                }
            }
            return Optional.of(new Loosened(loosening, enough));
        }

        private boolean possible(int units) {
            Possible answer = oracle.ask(loosening.loosen().by(request, units));
            certain &= answer != Possible.UNKNOWN;
            return answer == Possible.YES;
        }
    }
}
