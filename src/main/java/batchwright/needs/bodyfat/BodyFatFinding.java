package batchwright.needs.bodyfat;

import batchwright.person.Body;
import batchwright.person.BodyFat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How body fat came about, and what other methods say of it. A measured figure goes first. An estimate is taken only when the
 * profile asks for one: by tape when there is one and its answer can be, else from BMI. What is not taken is a second opinion.
 *
 * @param body to reckon with: as the profile has it, with the estimate when one is asked for
 * @param estimate in use; empty when body fat was measured or nothing was asked
 * @param secondOpinions other methods; none of them is used
 */
public record BodyFatFinding(Body body, Optional<BodyFatEstimate> estimate, List<BodyFatEstimate> secondOpinions) {
    public static BodyFatFinding of(Body body) {
        Optional<BodyFatEstimate> tape = HodgdonFriedl1999.of(body);
        BodyFatEstimate byBmi = Deurenberg1991.of(body);
        List<BodyFatEstimate> all = new ArrayList<>();
        tape.ifPresent(all::add);
        if (tape.isPresent() || body.fat().isPresent()) {
            all.add(byBmi);
        }
        if (!isAskedFor(body)) {
            return new BodyFatFinding(body, Optional.empty(), List.copyOf(all));
        }
        BodyFatEstimate inUse = tape.filter(BodyFatEstimate::possible).orElse(byBmi);
        all.remove(inUse);
        return new BodyFatFinding(body.withFat(fat(inUse)), Optional.of(inUse), List.copyOf(all));
    }

    /** Also of a body that already has its estimate: the answer is the same. */
    private static boolean isAskedFor(Body body) {
        return body.fat().filter(fat -> !(fat instanceof BodyFat.Measured)).isPresent();
    }

    private static BodyFat fat(BodyFatEstimate estimate) {
        return new BodyFat.Estimated(
                estimate.fat(), estimate.method(), estimate.errorPoints(), estimate.tellsMoreThanBmi());
    }
}
