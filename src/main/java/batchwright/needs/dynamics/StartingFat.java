package batchwright.needs.dynamics;

import batchwright.needs.bodyfat.BodyFatEstimate;
import batchwright.needs.bodyfat.BodyFatFinding;
import batchwright.needs.bodyfat.Deurenberg1991;
import batchwright.person.Body;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.util.Optional;

/**
 * Body fat that the model starts with: as told when that can be believed, else as the profile asks, else by BMI. Hall et al. 2011 took
 * Jackson et al. 2002 (from memory);
 * Deurenberg et al. 1991 stands here because its coefficients could be checked.
 *
 * @param estimate how it was estimated; empty when it was told
 */
public record StartingFat(Share share, Optional<BodyFatEstimate> estimate) {
    public static StartingFat of(Body body) {
        BodyFatFinding finding = BodyFatFinding.of(body);
        return finding.estimate()
                .map(StartingFat::estimated)
                .or(() -> body.bodyFat()
                        .filter(share -> finding.plausibility()
                                .filter(p -> !p.isPlausible())
                                .isEmpty())
                        .map(told -> new StartingFat(told, Optional.empty())))
                .orElseGet(() -> estimated(Deurenberg1991.of(body)));
    }

    private static StartingFat estimated(BodyFatEstimate estimate) {
        return new StartingFat(estimate.fat(), Optional.of(estimate));
    }

    Mass of(Mass weight) {
        return new Mass(share.fraction() * weight.kg());
    }
}
