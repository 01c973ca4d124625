package batchwright.needs.resting;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.quantity.Share;
import java.util.List;

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

    /** An equation's own error and that of the body fat it rests on, if it does, taken as independent and added as squares. */
    static UsualError added(UsualError own, RestingEnergyEquation equation, Body body) {
        double kcal = kcalOfError(equation, body);
        return kcal > 0
                ? new UsualError(
                        Math.hypot(own.kcal(), kcal),
                        own.says() + "; with " + Numerals.whole(kcal) + " kcal for the error of body fat")
                : own;
    }

    /** Why a fat-free mass may not be reliable. */
    static List<String> caveats(RestingEnergyEquation equation, Body body) {
        return body.fat()
                .filter(fat -> kcalOfError(equation, body) > 0)
                .map(FatDoubt::caveat)
                .orElse(List.of());
    }

    private static List<String> caveat(BodyFat fat) {
        if (fat instanceof BodyFat.Estimated estimated) {
            return List.of("body fat by " + estimated.method());
        }
        return fat instanceof BodyFat.Doubted ? List.of("body fat is doubtful") : List.of();
    }

    private static double kcalOfError(RestingEnergyEquation equation, Body body) {
        return kcal(equation, body, body.fatErrorPoints().orElse(0));
    }
}
