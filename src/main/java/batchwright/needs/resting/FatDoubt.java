package batchwright.needs.resting;

import batchwright.needs.evidence.UsualError;
import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.quantity.Share;
import java.util.List;
import java.util.Optional;

/** What the error of body fat does to a resting energy. */
final class FatDoubt {
    private FatDoubt() {}

    /** How far an equation's answer moves when body fat is so many percentage points higher [kcal/d]. */
    static double kcal(RestingEnergyEquation equation, Body body, double points) {
        return body.bodyFat()
                .map(fat -> body.withFat(new BodyFat.Measured(Share.ofPercent(fat.percent() + points))))
                .flatMap(equation::perDay)
                .flatMap(moved -> equation.perDay(body).map(as -> Math.abs(moved.kcal() - as.kcal())))
                .orElse(0.0);
    }

    /** An equation's own error and that of the estimate it rests on, if it does, taken as independent and added as squares. */
    static UsualError added(UsualError own, RestingEnergyEquation equation, Body body) {
        return estimate(body)
                .map(fat -> kcal(equation, body, fat.errorPoints()))
                .filter(kcal -> kcal > 0)
                .map(kcal -> new UsualError(
                        Math.hypot(own.kcal(), kcal),
                        own.says() + "; with " + Words.whole(kcal) + " kcal for the estimated body fat"))
                .orElse(own);
    }

    /** Why a fat-free mass may not be trusted. */
    static List<String> caveats(RestingEnergyEquation equation, Body body) {
        return estimate(body)
                .filter(fat -> kcal(equation, body, fat.errorPoints()) > 0)
                .map(fat -> "body fat by " + fat.method())
                .map(List::of)
                .orElse(List.of());
    }

    private static Optional<BodyFat.Estimated> estimate(Body body) {
        return body.fat().filter(BodyFat.Estimated.class::isInstance).map(BodyFat.Estimated.class::cast);
    }
}
