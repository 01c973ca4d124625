package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Where no change of one rule is enough: changes of two rules, else of three, that make a plan possible together. None of them is
 * larger than it has to be: by one unit less of any, the others being as they are, there is no plan.
 */
final class CuresTogether {
    private static final int MOST_RULES = 3;

    /** More would hardly be read. */
    private static final int MOST_SHOWN = 3;

    private final PlanRequest request;
    private final Oracle oracle;

    /** @param request without a plan */
    CuresTogether(PlanRequest request, Oracle oracle) {
        this.request = request;
        this.oracle = oracle;
    }

    /**
     * Those of the fewest rules; a few of them. Rules that are loosened last change only where nothing else is enough.
     *
     * @param sets of rules that clash: of each one has to change
     * @param figures rules of other figures, any of which may stand for one of the sets
     */
    List<List<Cure>> fewest(List<List<SoftRule>> sets, List<SoftRule> figures) {
        List<SoftRule> pool = new ArrayList<>(sets.stream()
                .flatMap(List::stream)
                .filter(SoftRule::canBeChanged)
                .toList());
        pool.addAll(figures);
        List<SoftRule> usual =
                pool.stream().filter(rule -> !rule.isLoosenedLast()).toList();
        List<List<Cure>> found = of(usual, sets);
        return found.isEmpty() && usual.size() < pool.size() ? of(pool, sets) : found;
    }

    private List<List<Cure>> of(List<SoftRule> pool, List<List<SoftRule>> sets) {
        List<List<Cure>> found = new ArrayList<>();
        for (int size = 2; size <= MOST_RULES && found.isEmpty(); size++) {
            for (List<SoftRule> some : choices(pool, 0, size)) {
                if (found.size() < MOST_SHOWN && mayDo(some, sets)) {
                    cured(some).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private static List<List<SoftRule>> choices(List<SoftRule> pool, int from, int size) {
        if (size == 0) {
            return List.of(List.of());
        }
        List<List<SoftRule>> all = new ArrayList<>();
        for (int i = from; i <= pool.size() - size; i++) {
            for (List<SoftRule> rest : choices(pool, i + 1, size - 1)) {
                List<SoftRule> choice = new ArrayList<>(List.of(pool.get(i)));
                choice.addAll(rest);
                all.add(choice);
            }
        }
        return all;
    }

    private static boolean mayDo(List<SoftRule> some, List<List<SoftRule>> sets) {
        long untouched =
                sets.stream().filter(set -> Collections.disjoint(set, some)).count();
        return untouched <= some.stream().filter(rule -> !rule.droppable()).count();
    }

    /** Other figures first: each is all or nothing. */
    private Optional<List<Cure>> cured(List<SoftRule> some) {
        List<SoftRule> droppable = some.stream().filter(SoftRule::droppable).toList();
        List<SoftRule> figures = some.stream().filter(rule -> !rule.droppable()).toList();
        return withFigures(request, figures, List.of(), droppable);
    }

    private Optional<List<Cure>> withFigures(
            PlanRequest changed, List<SoftRule> figures, List<Cure> before, List<SoftRule> droppable) {
        if (figures.isEmpty()) {
            return least(changed, droppable).map(least -> joined(before, least));
        }
        SoftRule rule = figures.get(0);
        for (Loosening way : rule.ways()) {
            var cure = new Cure(rule, Optional.of(new Cure.Loosened(way, way.reach())), Optional.empty(), true);
            Optional<List<Cure>> found = withFigures(
                    cure.applied(changed),
                    figures.subList(1, figures.size()),
                    joined(before, List.of(cure)),
                    droppable);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<List<Cure>> least(PlanRequest changed, List<SoftRule> rules) {
        if (oracle.shareOf(2).ask(without(changed, rules)) != Possible.YES) {
            return Optional.empty();
        }
        List<SoftRule> reversed = new ArrayList<>(rules);
        Collections.reverse(reversed);
        return inOrder(changed, rules).or(() -> rules.size() > 1 ? inOrder(changed, reversed) : Optional.empty());
    }

    /** Each as little as will do with those before it changed and those after it dropped. */
    private Optional<List<Cure>> inOrder(PlanRequest changed, List<SoftRule> rules) {
        List<Cure> cures = new ArrayList<>();
        PlanRequest now = changed;
        for (int i = 0; i < rules.size(); i++) {
            PlanRequest others = without(now, rules.subList(i + 1, rules.size()));
            if (oracle.shareOf(2).ask(others) == Possible.YES) {
                return Optional.empty();
            }
            Cure cure = Cure.of(rules.get(i), others, oracle.shareOf(2));
            if (cure.found().isEmpty()) {
                return Optional.empty();
            }
            cures.add(cure);
            now = cure.applied(now);
        }
        return Optional.of(cures);
    }

    private static PlanRequest without(PlanRequest request, List<SoftRule> rules) {
        PlanRequest looser = request;
        for (SoftRule rule : rules) {
            looser = rule.dropped().apply(looser);
        }
        return looser;
    }

    private static List<Cure> joined(List<Cure> some, List<Cure> others) {
        List<Cure> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }
}
