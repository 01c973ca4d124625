package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks for a smallest set of rules that cannot all hold, by halves (Junker, QuickXplain, AAAI 2004): few questions where few of many
 * rules clash. What is found cannot hold, but does as soon as any one of it goes. A question that is not answered keeps the rules it
 * was about; each is then asked for by itself, and the set may be larger than need be where that is not answered either.
 */
final class Conflict {
    private final PlanRequest request;
    private final SoftRules softRules;
    private final Oracle oracle;
    private final Set<SoftRule> perhaps = new HashSet<>();
    private boolean unsure;

    /** @param request without a plan */
    Conflict(PlanRequest request, SoftRules softRules, Oracle oracle) {
        this.request = request;
        this.softRules = softRules;
        this.oracle = oracle;
    }

    /**
     * In the order of the soft rules.
     *
     * @param from the only ones that are held
     * @return empty when there is no plan even with every one of them dropped
     */
    List<SoftRule> smallest(List<SoftRule> from) {
        if (from.isEmpty() || clashing(List.of())) {
            return List.of();
        }
        List<SoftRule> preferred = new ArrayList<>(from);
        Collections.reverse(preferred);
        List<SoftRule> set = smallest(List.of(), false, preferred);
        List<SoftRule> inOrder =
                from.stream().filter(set::contains).toList();
        return unsure ? oneByOne(inOrder) : inOrder;
    }

    /** Whether all the others of the set can hold without it, as far as known. */
    boolean isNeeded(SoftRule softRule) {
        return !perhaps.contains(softRule);
    }

    /**
     * @param held rules that are kept
     * @param more whether that is more than was known to be possible
     * @param others what is needed besides is looked for among these
     */
    private List<SoftRule> smallest(List<SoftRule> held, boolean more, List<SoftRule> others) {
        if (more && clashing(held)) {
            return List.of();
        }
        if (others.size() == 1) {
            return others;
        }
        List<SoftRule> first = others.subList(0, others.size() / 2);
        List<SoftRule> last = others.subList(others.size() / 2, others.size());
        List<SoftRule> ofLast = smallest(joined(held, first), true, last);
        List<SoftRule> ofFirst = smallest(joined(held, ofLast), !ofLast.isEmpty(), first);
        return joined(ofFirst, ofLast);
    }

    private List<SoftRule> oneByOne(List<SoftRule> set) {
        List<SoftRule> kept = new ArrayList<>(set);
        for (SoftRule softRule : set) {
            List<SoftRule> others = new ArrayList<>(kept);
            others.remove(softRule);
            switch (ask(others)) {
                case NO -> kept = others;
                case UNKNOWN -> perhaps.add(softRule);
                case YES -> {}
            }
        }
        return kept;
    }

    private boolean clashing(List<SoftRule> held) {
        Possible possible = ask(held);
        unsure |= possible == Possible.UNKNOWN;
        return possible == Possible.NO;
    }

    /** Easy questions leave their work to hard ones, which must not take all of it. */
    private Possible ask(List<SoftRule> held) {
        return oracle.shareOf(2).ask(softRules.holding(request, held));
    }

    private static List<SoftRule> joined(List<SoftRule> some, List<SoftRule> others) {
        List<SoftRule> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }
}
