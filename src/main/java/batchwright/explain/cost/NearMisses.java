package batchwright.explain.cost;

import batchwright.explain.CostOracle;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks for foods that just missed. First all foods that are not bought are offered for less: which enter first is how near each
 * was. Then each of them alone: the plan that buys it at some price tells up to which price that plan would pay, and that is the
 * next price to ask for, until a cent more is proven too much.
 */
final class NearMisses {
    private static final List<Integer> PER_CENT_OFF = List.of(5, 10, 20, 30, 50);
    private static final int PER_CENT = 100;
    private static final int MOST = 5;
    /** About so many questions of price for one food. */
    private static final int QUESTIONS = 3;

    private final PlanRequest request;
    private final Set<Food> used;
    private final Money cheapest;
    private final CostOracle oracle;
    private final Set<Pack> tried = new HashSet<>();
    private final List<NearMiss> found = new ArrayList<>();
    private boolean complete = true;

    /**
     * What was found, nearest first.
     *
     * @param complete whether it is proven that no other food misses by less
     */
    record Found(List<NearMiss> misses, boolean complete) {}

    /** @param plan proven cheapest */
    NearMisses(PlanRequest request, Plan plan, CostOracle oracle) {
        this.request = request;
        this.used = plan.shopping().stream().map(Purchase::food).collect(Collectors.toSet());
        this.cheapest = plan.cost();
        this.oracle = oracle;
    }

    Found find() {
        for (int percent : PER_CENT_OFF) {
            while (found.size() < MOST && complete && oneMore(percent)) {
                found.sort(Comparator.comparingDouble(NearMiss::shareOff));
            }
        }
        return new Found(List.copyOf(found), complete);
    }

    /** Whether some food enters when all those not yet tried are this much cheaper; it is then tried. */
    private boolean oneMore(int percentOff) {
        int open = (MOST - found.size()) * (QUESTIONS + 1);
        var cheaper = Repriced.of(
                request,
                pack -> used.contains(pack.food()) || tried.contains(pack) ? Optional.empty() : less(pack, percentOff));
        CostOracle.Answer answer = oracle.ask(cheaper.request(), open);
        Optional<Plan> plan = answer.plan().filter(this::isCheaper);
        if (plan.isEmpty()) {
            complete &= savesNothing(answer);
            return false;
        }
        Map<Pack, Integer> bought = cheaper.bought(plan.get());
        List<Pack> entered = bought.keySet().stream()
                .filter(pack -> !used.contains(pack.food()) && !tried.contains(pack))
                .toList();
        tried.addAll(entered);
        for (Pack pack : entered) {
            enters(pack, worth(pack, bought), open).ifPresent(found::add);
        }
        return !entered.isEmpty();
    }

    private static Optional<Money> less(Pack pack, int percentOff) {
        return Optional.of(new Money(pack.price().minor() * (PER_CENT - percentOff) / PER_CENT));
    }

    /** The highest price of a pack at which buying so is cheaper than the cheapest plan [cents]; negative when none is. */
    private long worth(Pack pack, Map<Pack, Integer> bought) {
        long others = bought.entrySet().stream()
                .filter(e -> !e.getKey().equals(pack))
                .mapToLong(e -> e.getKey().price().minor() * e.getValue())
                .sum();
        return Math.floorDiv(
                cheapest.minor() - 1 - others, bought.getOrDefault(pack, 1).longValue());
    }

    /**
     * Asks for a cent more than what is known, again and again.
     *
     * @param known a price at which it enters [cents]; negative when none is known
     */
    private Optional<NearMiss> enters(Pack pack, long known, int shares) {
        long at = Math.max(-1, known);
        while (at + 1 < pack.price().minor()) {
            Optional<Money> next = Optional.of(new Money(at + 1));
            var cheaper = Repriced.of(request, other -> other.equals(pack) ? next : Optional.empty());
            CostOracle.Answer answer = oracle.ask(cheaper.request(), shares);
            Optional<Plan> plan = answer.plan().filter(this::isCheaper);
            if (plan.isEmpty()) {
                complete &= savesNothing(answer);
                return at < 0 ? Optional.empty() : Optional.of(new NearMiss(pack, new Money(at), savesNothing(answer)));
            }
            at = Math.max(at + 1, worth(pack, cheaper.bought(plan.get())));
        }
        return Optional.of(new NearMiss(pack, new Money(at), true));
    }

    private boolean isCheaper(Plan plan) {
        return plan.cost().compareTo(cheapest) < 0;
    }

    private boolean savesNothing(CostOracle.Answer answer) {
        return answer.cost().least().compareTo(cheapest) >= 0;
    }
}
