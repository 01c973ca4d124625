package batchwright.audit;

import batchwright.person.Eater;
import batchwright.plan.EaterDays;
import java.math.BigDecimal;

/** The plan's average day, times the days, is all days of the eater together, by the files' foods. */
record AverageDay() implements Inspection {
    @Override
    public String name() {
        return "average day";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.session().eaters().stream()
                .filter(eater -> evidence.known().seat(eater.seat().eater()).isPresent())
                .filter(eater -> !eater.days().isEmpty())
                .forEach(eater -> inspectEater(evidence, eater, findings));
    }

    private static void inspectEater(Evidence evidence, EaterDays days, Findings findings) {
        Eater eater = days.seat().eater();
        if (!days.days().stream().allMatch(day -> evidence.eaten().allCooked(eater, day))) {
            findings.add(eater.name() + ": a dish is served that is not cooked for them");
            return;
        }
        var all = new Grams();
        days.days().forEach(day -> all.add(evidence.eaten().onDay(eater, day), 1));
        BigDecimal count = BigDecimal.valueOf(days.days().size());
        Stated.compare(
                eater.name() + ", all days by their average",
                evidence.session().averageDay(days).times(count),
                all,
                findings);
    }
}
