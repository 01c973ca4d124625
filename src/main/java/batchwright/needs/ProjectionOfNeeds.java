package batchwright.needs;

import batchwright.needs.evidence.Estimate;
import batchwright.needs.projection.Projection;
import batchwright.needs.projection.TotalBand;
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

    /** The total give or take the usual error of the resting energy in use, times PAL. */
    private static TotalBand band(Needs needs) {
        Estimate inUse = needs.resting().get(0);
        double error = inUse.errorKcal() * needs.eater().activity().pal();
        return new TotalBand(
                needs.total().plus(new Energy(-error)),
                needs.total(),
                needs.total().plus(new Energy(error)));
    }
}
