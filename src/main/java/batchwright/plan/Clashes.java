package batchwright.plan;

import java.util.List;

/**
 * Why there is no plan, and what would make one possible.
 *
 * @param sets each by itself leaves no plan; no rule is in two of them. Empty where nothing is known
 * @param together where no change of one rule is enough: changes that are enough together, none of them larger than it has to be,
 *     each a rule with its cure
 * @param timeEnded whether time ended before all this was known
 */
public record Clashes(List<ClashSet> sets, List<List<Clash>> together, boolean timeEnded) {
    public static final Clashes NONE = new Clashes(List.of(), List.of());

    public Clashes {
        sets = List.copyOf(sets);
        together = together.stream().map(List::copyOf).toList();
    }

    /** For which there was time. */
    public Clashes(List<ClashSet> sets, List<List<Clash>> together) {
        this(sets, together, false);
    }

    public Clashes withTimeEnded(boolean ended) {
        return new Clashes(sets, together, ended);
    }

    /** One set, of which each rule tells its own cure. */
    public static Clashes of(List<Clash> rules) {
        return rules.isEmpty() ? NONE : new Clashes(List.of(new ClashSet(rules, List.of())), List.of());
    }

    /** The rules of all sets. */
    public List<Clash> all() {
        return sets.stream().flatMap(set -> set.rules().stream()).toList();
    }

    public boolean isEmpty() {
        return sets.isEmpty();
    }
}
