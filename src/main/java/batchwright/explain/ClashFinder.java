package batchwright.explain;

import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Planner.Possible;
import batchwright.plan.Proof;
import batchwright.plan.Remedy;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Stream;

/**
 * Why there is no plan: a smallest set of rules that cannot all hold, and for each of them the smallest change of it alone that
 * makes a plan possible. Where there is a plan, but too dear, the budget is one of the rules. Where there is none at any cost, a
 * change still has to make a plan possible within the budget; if none does, it says how much larger the budget must be besides.
 */
public final class ClashFinder {
    private static final Duration ALL = Duration.ofSeconds(8);

    /** With less time nothing would be found out. */
    private static final Duration LEAST = Duration.ofSeconds(1);

    private static final Duration ONE_QUESTION = Duration.ofSeconds(2);
    private static final int HALF = 2;

    private final Planner planner;
    private final LongSupplier nanos;
    private final Duration all;
    private final Duration oneQuestion;

    /** Takes at most 8 s and no more than what is left, but at least a second. */
    public ClashFinder(Planner planner, Duration left) {
        this(planner, System::nanoTime, within(left), ONE_QUESTION);
    }

    private static Duration within(Duration left) {
        Duration enough = left.compareTo(LEAST) < 0 ? LEAST : left;
        return enough.compareTo(ALL) < 0 ? enough : ALL;
    }

    /**
     * @param nanos a clock [ns]
     * @param all most time for everything
     * @param oneQuestion most time for one question to the planner
     */
    ClashFinder(Planner planner, LongSupplier nanos, Duration all, Duration oneQuestion) {
        this.planner = new TimeLimitedPlanner(planner);
        this.nanos = nanos;
        this.all = all;
        this.oneQuestion = oneQuestion;
    }

    /**
     * The clashes of a request without a plan; at least one. Besides a budget that is too small only rules are named that are
     * proven to clash with it.
     *
     * @param proof how the planner's search ended
     */
    public List<Clash> clashes(PlanRequest request, Proof proof) {
        Oracle oracle = oracle();
        Optional<Clash> tooDear = request.budget()
                .filter(budget -> proof.cost().compareTo(budget) > 0)
                .map(budget -> tooDear(budget, proof, request.kitchen().currency()));
        if (tooDear.isPresent()) {
            List<Clash> clashes = new ArrayList<>(tooDear.stream().toList());
            Search.withinBudget(request, oracle).clashes().stream()
                    .filter(Clash::needed)
                    .forEach(clashes::add);
            return clashes;
        }
        Optional<PlainCauses.Cause> plain = new PlainCauses(request).first();
        if (plain.isPresent()) {
            return List.of(plain.get().clash(Cure.atAnyCost(plain.get().softRule(), request, oracle)));
        }
        Optional<Clash> tooLong = tooLong(request, oracle);
        if (tooLong.isPresent()) {
            return List.of(tooLong.get());
        }
        List<Clash> clashes = Search.atAnyCost(request, oracle).clashes();
        return clashes.isEmpty() ? List.of(NO_RULE) : clashes;
    }

    /** A plan that only takes more time is named alone: how much more is what a cook wants to know. */
    private static Optional<Clash> tooLong(PlanRequest request, Oracle oracle) {
        return Stream.of(SoftCooking.handsOnMinutes(request), SoftCooking.doneWithin(request))
                .flatMap(Optional::stream)
                .filter(rule -> oracle.ask(rule.dropped().apply(request)) == Possible.YES)
                .findFirst()
                .map(rule -> Cure.atAnyCost(rule, request, oracle).clash(true));
    }

    private static final Clash NO_RULE = new Clash(
            "part range",
            "whatever the targets, the dishes make no plan with their parts within their ranges and with the foods that"
                    + " are at home or sold",
            "",
            Optional.of(new Remedy.ChangeDishesOrPacks()));

    /** There is a plan, but not within the budget. */
    private static Clash tooDear(Money budget, Proof proof, Currency currency) {
        return proof.provenCheapest()
                ? Clash.budget(budget, proof.cost(), currency)
                : perhapsTooDear(budget, proof, currency);
    }

    /** Which is cheapest was not known in time. */
    private static Clash perhapsTooDear(Money budget, Proof proof, Currency currency) {
        String raised = currency.text(proof.cost());
        return new Clash(
                "budget",
                "the checkout cost stays within " + currency.text(budget) + "; every plan costs at least "
                        + currency.text(proof.lowerBound()),
                "raise the budget to " + raised + ", the cost of a plan that was found; perhaps less would do",
                Optional.of(new Remedy.RaiseBudget(Optional.of(proof.cost()), currency)));
    }

    /** For a request without a plan at any cost: one for each rule of the set. Empty when no rule that can be loosened is to blame. */
    List<Cure> cures(PlanRequest request) {
        return Search.atAnyCost(request, oracle()).cures();
    }

    /** For a request with plans, all too dear: one for each rule of the set besides the budget. */
    List<Cure> curesWithinBudget(PlanRequest request) {
        return Search.withinBudget(request, oracle()).cures();
    }

    private Oracle oracle() {
        return new Oracle(planner, nanos, oneQuestion, all);
    }

    /** How a rule of the set is cured. */
    private interface Cured {
        Cure of(SoftRule softRule, PlanRequest request, Oracle oracle);
    }

    /** For one request. */
    private static final class Search {
        private final PlanRequest request;
        private final Cured cured;
        private final Oracle oracle;
        private final Conflict conflict;

        private Search(PlanRequest request, PlanRequest clashing, Cured cured, Oracle oracle) {
            this.request = request;
            this.cured = cured;
            this.oracle = oracle;
            this.conflict = new Conflict(clashing, SoftRules.of(request), oracle.shareOf(HALF));
        }

        /** Which rules clash whatever a plan may cost. */
        static Search atAnyCost(PlanRequest request, Oracle oracle) {
            return new Search(request, request.withBudget(Optional.empty()), Cure::atAnyCost, oracle);
        }

        /** Which rules clash with the budget. */
        static Search withinBudget(PlanRequest request, Oracle oracle) {
            return new Search(request, request, Cure::of, oracle);
        }

        List<Clash> clashes() {
            return cures().stream()
                    .map(cure -> cure.clash(
                            conflict.isNeeded(cure.softRule()) || cure.found().isPresent()))
                    .toList();
        }

        /** Those that are loosened last come last, and are left as they are when another cure is known. */
        List<Cure> cures() {
            List<SoftRule> softRules = conflict.smallest();
            List<SoftRule> last =
                    softRules.stream().filter(SoftRule::isLoosenedLast).toList();
            List<Cure> cures = new ArrayList<>(cured(
                    softRules.stream().filter(rule -> !rule.isLoosenedLast()).toList()));
            cures.addAll(otherContainers(1));
            if (noneHelps(cures)) {
                cures.addAll(otherContainers(SoftWishes.MOST_CONTAINERS));
            }
            cures.addAll(
                    noneHelps(cures)
                            ? cured(last)
                            : last.stream().map(Cure::none).toList());
            return cures;
        }

        private static boolean noneHelps(List<Cure> cures) {
            return cures.stream().allMatch(cure -> cure.found().isEmpty());
        }

        /** Each learns what is left of the time when its turn comes. */
        private List<Cure> cured(List<SoftRule> softRules) {
            List<Cure> cures = new ArrayList<>();
            for (int i = 0; i < softRules.size(); i++) {
                cures.add(cured.of(softRules.get(i), request, oracle.shareOf(softRules.size() - i + 1)));
            }
            return cures;
        }

        /** Containers a day always hold; but where a few more or less make a plan possible, that too is a rule of the set. */
        private List<Cure> otherContainers(int mostMoreOrLess) {
            return EaterInRequest.all(request).stream()
                    .map(at -> SoftWishes.containersADay(
                            at, Offered.to(at, request).size(), mostMoreOrLess))
                    .map(softRule -> cured.of(softRule, request, oracle))
                    .filter(cure -> cure.found().isPresent())
                    .toList();
        }
    }
}
