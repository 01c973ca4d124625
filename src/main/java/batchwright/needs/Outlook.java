package batchwright.needs;

import batchwright.needs.projection.Projection;
import batchwright.needs.projection.Stages;
import batchwright.needs.projection.TotalBand;
import batchwright.needs.total.TotalRange;
import batchwright.quantity.Energy;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How far to look ahead, besides the needs.
 *
 * @param weeks of a projection, at least 1; empty when none is asked for
 * @param stepWeeks of targets in steps, likewise
 */
public record Outlook(OptionalInt weeks, OptionalInt stepWeeks) {
    /** Where weight goes when the target's energy is eaten; empty when a caution stops planning, or when it is not asked for. */
    public Optional<Projection> projection(Needs needs) {
        return weeks.isPresent() ? projection(needs, weeks.getAsInt()) : Optional.empty();
    }

    /** How the target changes as weight does; empty likewise. */
    public Optional<Stages> steps(Needs needs) {
        return stepWeeks.isPresent()
                ? needs.goal().map(goal -> Stages.of(goal, stepWeeks.getAsInt()))
                : Optional.empty();
    }

    /** @param weeks at least 1 */
    public static Optional<Projection> projection(Needs needs, int weeks) {
        return needs.target()
                .map(target -> Projection.of(
                        needs.eater().body(),
                        band(needs),
                        needs.eater().activity().pal(),
                        new Energy(target.energyAimKcal()),
                        weeks));
    }

    private static TotalBand band(Needs needs) {
        TotalRange range = needs.totalRange();
        return new TotalBand(range.least(), needs.total(), range.most());
    }
}
