package batchwright.explain;

import batchwright.plan.PlanRequest;
import java.util.ArrayList;
import java.util.List;

/** For each rule of a set that clashes the smallest change of it alone that makes a plan possible, if there is one. */
final class CuresAlone {
    private final PlanRequest request;
    private final Oracle oracle;
    private final Cured cured;

    /** How a rule of the set is cured. */
    interface Cured {
        Cure of(SoftRule softRule, PlanRequest request, Oracle oracle);
    }

    CuresAlone(PlanRequest request, Oracle oracle, Cured cured) {
        this.request = request;
        this.oracle = oracle;
        this.cured = cured;
    }

    /** Those that are loosened last come last, and nothing less is avoided when another cure is known. */
    List<Cure> of(List<SoftRule> set) {
        List<SoftRule> last = set.stream().filter(SoftRule::isLoosenedLast).toList();
        List<Cure> containers = helping(otherContainers(1));
        List<Cure> cures = new ArrayList<>(
                each(set.stream().filter(rule -> !rule.isLoosenedLast()).toList()));
        cures.addAll(containers);
        if (noneHelps(cures)) {
            cures.addAll(helping(otherContainers(SoftWishes.MOST_CONTAINERS)));
        }
        cures.addAll(noneHelps(cures) ? each(last) : beforeTheLast(last));
        return cures;
    }

    private List<Cure> beforeTheLast(List<SoftRule> rules) {
        List<Cure> cures = new ArrayList<>();
        for (SoftRule rule : rules) {
            Cure cure = cured.of(rule.beforeTheLast(), request, oracle);
            cures.add(new Cure(rule, cure.found(), cure.raised(), cure.certain()));
        }
        return cures;
    }

    private static boolean noneHelps(List<Cure> cures) {
        return cures.stream().allMatch(cure -> cure.found().isEmpty());
    }

    /** Each learns what is left of the work when its turn comes. */
    private List<Cure> each(List<SoftRule> rules) {
        List<Cure> cures = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            cures.add(cured.of(rules.get(i), request, oracle.shareOf(rules.size() - i)));
        }
        return cures;
    }

    /** Containers a day always hold; but where a few more or less make a plan possible, that too is a rule of the set. */
    List<SoftRule> otherContainers(int mostMoreOrLess) {
        return EaterInRequest.all(request).stream()
                .map(at -> SoftWishes.containersADay(at, Offered.to(at, request).size(), mostMoreOrLess))
                .toList();
    }

    /** Only those that make a plan possible. */
    List<Cure> helping(List<SoftRule> rules) {
        return rules.stream()
                .map(rule -> cured.of(rule, request, oracle.shareOf(2)))
                .filter(cure -> cure.found().isPresent())
                .toList();
    }
}
