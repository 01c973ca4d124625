package batchwright.needs.caution;

import batchwright.needs.bodyfat.BodyFatEstimate;
import batchwright.needs.bodyfat.BodyFatFinding;
import batchwright.needs.bodyfat.FatPlausibility;
import batchwright.needs.bodyfat.FatPlausibility.Verdict;
import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import java.util.ArrayList;
import java.util.List;

/** Says wherever cautions are shown, beside a plan too, that body fat was not measured, or is hard to believe. */
public final class BodyFatCautions {
    private static final Citation BOUNDS = Citation.designChoice(
            "bounds of fat-free mass set by the 97.5th percentiles of college athletes, 28.3 and 23.9 kg/m2, and by the estimate from BMI");

    private BodyFatCautions() {}

    /** Those that do not stop planning. */
    public static List<Caution> mild(BodyFatFinding finding) {
        List<Caution> cautions = new ArrayList<>();
        finding.plausibility()
                .filter(p -> p.verdict() == Verdict.DOUBTFUL)
                .map(p -> doubtful(finding, p))
                .ifPresent(cautions::add);
        finding.estimate().map(BodyFatCautions::estimated).ifPresent(cautions::add);
        return cautions;
    }

    /** A figure that cannot be stops planning, because everything else would rest on a slip. */
    public static List<Caution> impossible(BodyFatFinding finding) {
        return finding
                .plausibility()
                .filter(p -> p.verdict() == Verdict.IMPOSSIBLE)
                .map(p -> Caution.stop(
                        "body_fat_impossible",
                        said(finding) + " cannot be right: " + p.why()
                                + ". Look at weight, height and body fat again, or leave body fat out. No plan is made on it.",
                        BOUNDS))
                .stream()
                .toList();
    }

    private static Caution doubtful(BodyFatFinding finding, FatPlausibility doubt) {
        return Caution.warn(
                "body_fat_doubtful",
                said(finding) + " is hard to believe of this body, for which BMI suggests about "
                        + Numerals.whole(doubt.byBmi().fat().percent()) + " %: " + doubt.why()
                        + ". Measure again, best by another method. Until then the resting energy in use comes from weight, height"
                        + " and age, and its range is wider.",
                BOUNDS);
    }

    private static String said(BodyFatFinding finding) {
        return "Body fat of "
                + Numerals.plain(finding.body().bodyFat().orElseThrow().percent()) + " %";
    }

    private static Caution estimated(BodyFatEstimate estimate) {
        return Caution.warn(
                "body_fat_estimated",
                "Body fat was not measured. The profile asks for an estimate: "
                        + Numerals.oneDecimal(estimate.fat().percent()) + " %, give or take "
                        + Numerals.oneDecimal(estimate.errorPoints()) + " points, by " + estimate.method() + ". "
                        + (estimate.tellsMoreThanBmi()
                                ? "The resting energy in use rests on it, and the protein of a loss."
                                : "It holds nothing that weight, height, sex and age do not, so neither the resting energy in use nor"
                                        + " protein rests on it."),
                estimate.source());
    }
}
