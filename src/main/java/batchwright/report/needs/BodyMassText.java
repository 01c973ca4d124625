package batchwright.report.needs;

import batchwright.needs.Needs;
import batchwright.needs.caution.BmiBand;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.target.EnergyAvailability;
import batchwright.report.print.Page;

/** Body mass index and energy availability for people. */
final class BodyMassText {
    private final Needs needs;
    private final Page page;

    private BodyMassText(Needs needs, Page page) {
        this.needs = needs;
        this.page = page;
    }

    static void write(Needs needs, Page page) {
        var text = new BodyMassText(needs, page);
        page.heading("Body mass index and energy availability");
        text.bodyMass();
        needs.energyAvailability().ifPresent(text::availability);
    }

    private void bodyMass() {
        double bmi = needs.eater().body().bmi();
        var asian = BmiBand.asianActionPoint(bmi);
        item("BMI " + Numerals.oneDecimal(bmi) + " kg/m2: " + BmiBand.of(bmi).words()
                + (asian.isPresent()
                        ? "; for Asian adults at or above the action point of " + Numerals.plain(asian.getAsDouble())
                        : "")
                + ". It cannot tell muscle from fat. [" + BmiBand.SOURCE + "]");
    }

    private void availability(EnergyAvailability available) {
        item("The target leaves " + available.says() + ". About 45 is balance; 30 to 45 will do for a"
                + " short loss; below 30 can do harm. [" + EnergyAvailability.SOURCE + "]");
    }

    private void item(String text) {
        page.paragraph("  ", "    ", text);
    }
}
