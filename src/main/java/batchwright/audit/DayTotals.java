package batchwright.audit;

import batchwright.plan.Day;
import batchwright.plan.Seat;

/** The day totals that the plan states are those of the files' foods. */
record DayTotals() implements Inspection {
    @Override
    public String name() {
        return "day totals";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> {
            if (allCooked(evidence, seat, day)) {
                Stated.compare(
                        Say.day(seat, day),
                        evidence.plan().totals(seat.eater(), day),
                        evidence.eaten().onDay(seat.eater(), day),
                        findings);
            } else {
                findings.add(Say.day(seat, day) + ": a dish is served that is not cooked for them");
            }
        });
    }

    private static boolean allCooked(Evidence evidence, Seat seat, Day day) {
        return day.servings().stream()
                .allMatch(s -> evidence.eaten().fill(s.dish(), seat.eater()).isPresent());
    }
}
