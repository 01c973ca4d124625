package batchwright.needs;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.quantity.Energy;
import java.util.List;

/**
 * What holds body weight: resting energy x PAL.
 *
 * @param resting every published equation that can be worked out, the one in use first and marked
 * @param aDay energy a day
 * @param secondOpinions the same from equations that need no resting energy
 */
public record TotalEnergy(List<Estimate> resting, Energy aDay, Citation source, List<Estimate> secondOpinions) {
    public TotalEnergy {
        resting = List.copyOf(resting);
        secondOpinions = List.copyOf(secondOpinions);
    }
}
