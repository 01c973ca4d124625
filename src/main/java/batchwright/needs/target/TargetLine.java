package batchwright.needs.target;

import batchwright.limit.Limit;
import batchwright.needs.evidence.Citation;

/**
 * One line of the target with its reason.
 *
 * @param name such as protein
 * @param says the figure in words, such as at least 133 g
 */
public record TargetLine(String name, String says, Citation source) {
    static TargetLine of(Limit limit) {
        String why = limit.reason().says();
        return new TargetLine(
                limit.scope().measured(limit.measured()),
                limit.range().says(limit.unit()) + (why.isEmpty() ? "" : ": " + why),
                new Citation(limit.reason().source()));
    }
}
