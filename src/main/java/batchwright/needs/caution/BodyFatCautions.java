package batchwright.needs.caution;

import batchwright.needs.bodyfat.BodyFatEstimate;
import batchwright.needs.bodyfat.BodyFatFinding;
import batchwright.needs.evidence.Words;
import java.util.List;

/** Says wherever cautions are shown, beside a plan too, that body fat was not measured. */
public final class BodyFatCautions {
    private BodyFatCautions() {}

    public static List<Caution> of(BodyFatFinding finding) {
        return finding.estimate().map(BodyFatCautions::estimated).stream().toList();
    }

    private static Caution estimated(BodyFatEstimate estimate) {
        return Caution.warn(
                "body_fat_estimated",
                "Body fat was not measured. The profile asks for an estimate: "
                        + Words.oneDecimal(estimate.fat().percent()) + " %, give or take "
                        + Words.oneDecimal(estimate.errorPoints()) + " points, by " + estimate.method() + ". "
                        + (estimate.tellsMoreThanBmi()
                                ? "The resting energy in use rests on it, and the protein of a loss."
                                : "It holds nothing that weight, height, sex and age do not, so neither the resting energy in use nor"
                                        + " protein rests on it."),
                estimate.source());
    }
}
