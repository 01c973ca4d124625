package batchwright.needs.bodyfat;

import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How body fat came about, and what other methods say of it. A told figure goes first; where it is hard to believe it stays, but nothing is
 * built on it. An estimate is taken only when the profile asks for one: by tape when there is one and its answer can be, else from BMI. What
 * is not taken is a second opinion.
 *
 * @param body to reckon with: as the profile has it, with the estimate when one is asked for
 * @param estimate in use; empty when body fat was told or nothing was asked
 * @param secondOpinions other methods; none of them is used
 * @param plausibility of a told figure
 */
public record BodyFatFinding(
        Body body,
        Optional<BodyFatEstimate> estimate,
        List<BodyFatEstimate> secondOpinions,
        Optional<FatPlausibility> plausibility) {
    public static BodyFatFinding of(Body body) {
        Optional<BodyFatEstimate> tape = HodgdonFriedl1999.of(body);
        BodyFatEstimate byBmi = Deurenberg1991.of(body);
        List<BodyFatEstimate> all = new ArrayList<>();
        tape.ifPresent(all::add);
        if (tape.isPresent() || body.fat().isPresent()) {
            all.add(byBmi);
        }
        if (!isAskedFor(body)) {
            return told(body, List.copyOf(all));
        }
        BodyFatEstimate inUse = tape.filter(BodyFatEstimate::possible).orElse(byBmi);
        all.remove(inUse);
        return new BodyFatFinding(body.withFat(fat(inUse)), Optional.of(inUse), List.copyOf(all), Optional.empty());
    }

    private static BodyFatFinding told(Body body, List<BodyFatEstimate> others) {
        Optional<BodyFat.Measured> told = body.fat().flatMap(BodyFatFinding::asTold);
        Optional<FatPlausibility> plausibility = told.map(fat -> FatPlausibility.of(body, fat));
        Body believed = plausibility
                .filter(p -> !p.isPlausible())
                .map(doubt -> body.withFat(doubt.doubted(told.orElseThrow())))
                .orElse(body);
        return new BodyFatFinding(believed, Optional.empty(), others, plausibility);
    }

    /** How a told figure was found. */
    public Optional<FatMethod> method() {
        return body.fat().flatMap(BodyFatFinding::asTold).map(BodyFat.Measured::method);
    }

    private static Optional<BodyFat.Measured> asTold(BodyFat fat) {
        return fat instanceof BodyFat.Doubted doubted
                ? Optional.of(doubted.said())
                : Optional.of(fat).filter(BodyFat.Measured.class::isInstance).map(BodyFat.Measured.class::cast);
    }

    /** Also for a body that already has its estimate: the answer is the same. */
    private static boolean isAskedFor(Body body) {
        return body.fat().filter(fat -> asTold(fat).isEmpty()).isPresent();
    }

    private static BodyFat fat(BodyFatEstimate estimate) {
        return new BodyFat.Estimated(
                estimate.fat(), estimate.method(), estimate.errorPoints(), estimate.tellsMoreThanBmi());
    }
}
