package batchwright.needs;

import batchwright.needs.projection.Projection;
import batchwright.needs.projection.TotalBand;
import batchwright.needs.total.TotalRange;
import batchwright.quantity.Energy;
import java.util.Optional;

/** From needs to where weight goes when the target's energy is eaten. */
public final class ProjectionOfNeeds {
    private ProjectionOfNeeds() {}

    /**
     * @param weeks at least 1
     * @return empty when a caution stops planning
     */
    public static Optional<Projection> of(Needs needs, int weeks) {
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
