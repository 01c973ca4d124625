package batchwright.explain;

import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One rule that can be loosened. A rule of one eater has a soft rule for each of them.
 *
 * @param rule its name, as in the audit
 * @param says the rule in the words of the user's files, with its figure and eater
 * @param dropped the request without the rule: at least as loose as every loosening makes it
 * @param loosenings ways to loosen it, likeliest first; those of a later list are for when none of an earlier list helps. None where
 *     nobody can change it
 * @param instead what may help instead of loosening it, of a rule that is loosened only when no change of another rule helps
 * @param droppable whether it can be dropped at all; else its loosenings are other figures, each all or nothing
 */
public record SoftRule(
        String rule,
        String says,
        UnaryOperator<PlanRequest> dropped,
        List<List<Loosening>> loosenings,
        Optional<Remedy> instead,
        boolean droppable) {
    public SoftRule {
        loosenings = List.copyOf(loosenings);
    }

    SoftRule(String rule, String says, UnaryOperator<PlanRequest> dropped, List<List<Loosening>> loosenings) {
        this(rule, says, dropped, loosenings, Optional.empty());
    }

    SoftRule(
            String rule,
            String says,
            UnaryOperator<PlanRequest> dropped,
            List<List<Loosening>> loosenings,
            Optional<Remedy> instead) {
        this(rule, says, dropped, loosenings, instead, true);
    }

    /** A rule that no figure loosens: there are only others. */
    static SoftRule ofOtherFigures(String rule, String says, List<List<Loosening>> figures) {
        return new SoftRule(rule, says, UnaryOperator.identity(), figures, Optional.empty(), false);
    }

    boolean isLoosenedLast() {
        return instead.isPresent();
    }

    /** What is no last resort: dishes without a part, never less avoided. */
    SoftRule beforeTheLast() {
        List<Loosening> ways = ways().stream()
                .filter(way -> leavesOut(way.remedy().apply(way.reach())))
                .toList();
        return new SoftRule(rule, says, dropped, List.of(ways), instead, droppable);
    }

    private static boolean leavesOut(Remedy remedy) {
        return remedy instanceof Remedy.LeaveOut
                || (remedy instanceof Remedy.Together both && leavesOut(both.first()) && leavesOut(both.besides()));
    }

    boolean canBeChanged() {
        return ways().stream().anyMatch(way -> way.reach() > 0);
    }

    /** All loosenings, the likeliest first. */
    List<Loosening> ways() {
        return loosenings.stream().flatMap(List::stream).toList();
    }

    Clash clash(String cure, Optional<Remedy> remedy, boolean needed) {
        return new Clash(rule, says, cure, remedy, needed);
    }
}
