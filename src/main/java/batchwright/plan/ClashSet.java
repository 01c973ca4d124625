package batchwright.plan;

import java.util.List;

/**
 * A smallest set of rules that cannot all hold: any of them left out, the others can.
 *
 * @param eaters names of those for whom they cannot hold, as few as will do; empty where only one is planned for
 */
public record ClashSet(List<Clash> rules, List<String> eaters) {
    public ClashSet {
        rules = List.copyOf(rules);
        eaters = List.copyOf(eaters);
    }
}
