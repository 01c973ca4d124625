package batchwright.explain.cost;

import batchwright.explain.CostOracle;
import batchwright.explain.EaterInRequest;
import batchwright.explain.KnownCost;
import batchwright.food.Nutrient;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.person.Eater;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The least cost at each protein floor, as far as it was asked for. Every eater's floor is moved by the same grams. More protein
 * never costs less, so that an answer at one floor tells something of all others.
 */
public final class ProteinStairs {
    /** Nobody is asked to eat more than this [g per kg]: the upper end of any range that ProteinFloor quotes (Helms et al. 2014). */
    private static final double MOST_PROTEIN_G_PER_KG = 3.1;

    /** Enough to halve the distance between any floors that are asked for. */
    static final int QUESTIONS = 9;

    private final PlanRequest request;
    private final CostOracle oracle;
    private final TreeMap<Integer, KnownCost> bounds = new TreeMap<>();
    private final TreeMap<Integer, Money> plans = new TreeMap<>();

    ProteinStairs(PlanRequest request, CostOracle oracle) {
        this.request = request;
        this.oracle = oracle;
    }

    /** What is known of the request itself. */
    ProteinStairs knowing(KnownCost cost, Optional<Plan> plan) {
        learn(0, new CostOracle.Answer(cost, plan));
        return this;
    }

    /** [g a day] */
    static int floor(EaterInRequest at) {
        return at.target().day(Nutrient.PROTEIN).least();
    }

    /** No change asks for less than this [g a day]. */
    private static int lowest(EaterInRequest at) {
        return at.target()
                .limit(Scope.DAY, Nutrient.PROTEIN)
                .map(limit -> limit.widest().least())
                .orElse(0);
    }

    /** The lowest change of the floors that is asked for [g]. */
    int lowest() {
        return EaterInRequest.all(request).stream()
                .mapToInt(at -> lowest(at) - floor(at))
                .max()
                .orElse(0);
    }

    /** The highest. */
    int highest() {
        return EaterInRequest.all(request).stream()
                .mapToInt(at -> (int) (MOST_PROTEIN_G_PER_KG
                                * at.eater().body().weight().kg())
                        - floor(at))
                .min()
                .orElse(0);
    }

    /** As far as known without asking. */
    KnownCost known(int change) {
        var below = bounds.headMap(change, true).values();
        if (below.stream().anyMatch(KnownCost::noPlan)) {
            return KnownCost.NO_PLAN;
        }
        Money least = below.stream().map(KnownCost::least).max(Money::compareTo).orElse(Money.ZERO);
        var none = new KnownCost(least, Optional.empty(), false);
        return plans.tailMap(change, true).values().stream()
                .min(Money::compareTo)
                .map(none::notAbove)
                .orElse(none);
    }

    /** @param shares how many questions are still to share the time that is left, this one counted */
    KnownCost ask(int change, int shares) {
        if (!known(change).proven()) {
            learn(change, oracle.ask(at(change), shares));
        }
        return known(change);
    }

    private void learn(int change, CostOracle.Answer answer) {
        bounds.merge(change, answer.cost(), (old, now) -> now.noPlan() ? now : old.notBelow(now.least()));
        answer.plan()
                .ifPresent(plan -> plans.merge(Math.max(change, spare(plan)), plan.cost(), ProteinStairs::cheaper));
    }

    private static Money cheaper(Money a, Money b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    private PlanRequest at(int change) {
        PlanRequest changed = request;
        for (EaterInRequest at : EaterInRequest.all(request)) {
            int grams = Math.max(0, floor(at) + change);
            changed = at.withTarget(changed, t -> t.with(Scope.DAY, Nutrient.PROTEIN, Range.atLeast(grams)));
        }
        return changed;
    }

    /** By how much the plan would let every floor of the request rise [g]. */
    private int spare(Plan plan) {
        return plan.sessions().stream().mapToInt(this::spare).min().orElseThrow();
    }

    private int spare(Session session) {
        int spare = Integer.MAX_VALUE;
        for (EaterInRequest at : EaterInRequest.all(request)) {
            for (EaterDays days : session.eaters()) {
                if (days.seat().eater().equals(at.eater())) {
                    for (Day day : days.days()) {
                        spare = Math.min(spare, protein(session, at.eater(), day) - floor(at));
                    }
                }
            }
        }
        return spare;
    }

    private static int protein(Session session, Eater eater, Day day) {
        BigDecimal grams = session.totals(eater, day).get(Nutrient.PROTEIN);
        return grams.setScale(0, RoundingMode.FLOOR).intValue();
    }

    /**
     * The most protein for this money, looked for by halving.
     *
     * @param later how many questions are to share the time that is left after these, at most {@link #QUESTIONS}
     */
    ProteinReach within(Money budget, int later) {
        int undecided = Integer.MAX_VALUE;
        for (int questions = QUESTIONS; questions > 0; questions--) {
            int below = affordable(budget).orElse(lowest() - 1);
            int above = Math.min(tooDear(budget), undecided);
            if (above - below <= 1) {
                break;
            }
            int middle = below + (above - below) / 2;
            if (!isDecided(ask(middle, questions + later), budget)) {
                undecided = middle; // perhaps something is known nearer to what can be had
            }
        }
        int above = tooDear(budget);
        return new ProteinReach(
                affordable(budget), Optional.of(above - 1).filter(change -> change >= lowest()), above > highest());
    }

    private static boolean isDecided(KnownCost cost, Money budget) {
        return cost.isWithin(budget) || cost.isAbove(budget);
    }

    private Optional<Integer> affordable(Money budget) {
        return plans.entrySet().stream()
                .filter(e -> e.getValue().compareTo(budget) <= 0)
                .map(e -> Math.min(e.getKey(), highest()))
                .max(Integer::compare)
                .filter(change -> change >= lowest());
    }

    /** The first change that is proven to cost more; one above the highest when none is. */
    private int tooDear(Money budget) {
        return bounds.entrySet().stream()
                .filter(e -> e.getValue().isAbove(budget))
                .map(e -> e.getKey())
                .filter(change -> change <= highest())
                .findFirst()
                .orElse(highest() + 1);
    }
}
