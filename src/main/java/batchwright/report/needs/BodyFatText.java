package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.bodyfat.BodyFatEstimate;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.quantity.Share;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.Optional;

/** Body fat for people: how it came about, what its error means for resting energy, what other methods say. */
final class BodyFatText {
    private final Needs needs;
    private final Page page;

    private BodyFatText(Needs needs, Page page) {
        this.needs = needs;
        this.page = page;
    }

    static void write(Needs needs, Page page) {
        new BodyFatText(needs, page).write();
    }

    private void write() {
        page.heading("Body fat");
        Optional<Share> fat = needs.eater().body().bodyFat();
        needs.bodyFat()
                .estimate()
                .ifPresentOrElse(this::estimate, () -> fat.ifPresentOrElse(this::told, this::notSaid));
        needs.bodyFat()
                .secondOpinions()
                .forEach(other -> item("Second opinion, not used: " + figure(other) + caveats(other) + "."));
    }

    private void estimate(BodyFatEstimate estimate) {
        double kcal = needs.restingKcalPerFatPoint() * estimate.errorPoints();
        String meaning = estimate.tellsMoreThanBmi()
                ? "That is +- " + Show.whole(kcal) + " kcal a day of the resting energy in use."
                : "It holds nothing that weight, height, sex and age do not, so the resting energy in use does not rest on"
                        + " it: +- 0 kcal.";
        item("Not measured; the profile asks for an estimate: " + figure(estimate) + caveats(estimate) + ". "
                + meaning);
    }

    private void told(Share fat) {
        String figure = Show.oneDecimal(BigDecimal.valueOf(fat.percent())) + " %";
        item(
                needs.eater()
                                .body()
                                .fat()
                                .filter(BodyFat.Doubted.class::isInstance)
                                .isPresent()
                        ? figure + ", as the profile says, is doubtful; the resting energy in use does not rest on it."
                        : figure + ", " + method());
    }

    private String method() {
        double points = needs.eater().body().fatErrorPoints().orElse(0);
        FatMethod method = needs.bodyFat().method().orElse(FatMethod.NOT_SAID);
        return "as the profile says (" + method.words() + "), right to about "
                + Show.oneDecimal(BigDecimal.valueOf(points)) + " points (SD): +- "
                + Show.whole(points * needs.restingKcalPerFatPoint()) + " kcal a day of the resting energy in use. ["
                + method.source()
                + "]";
    }

    private void notSaid() {
        item(
                "Not said, so nothing rests on it. \"body_fat: estimate\" in the profile asks for an estimate, by tape or from"
                        + " BMI.");
    }

    private static String figure(BodyFatEstimate estimate) {
        return Show.oneDecimal(BigDecimal.valueOf(estimate.fat().percent())) + " % +- "
                + Show.oneDecimal(BigDecimal.valueOf(estimate.errorPoints())) + " points by " + estimate.method();
    }

    private static String caveats(BodyFatEstimate estimate) {
        return estimate.caveats().isEmpty() ? "" : " (" + String.join("; ", estimate.caveats()) + ")";
    }

    private void item(String text) {
        page.paragraph("  ", "    ", text);
    }
}
