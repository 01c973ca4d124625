package batchwright.audit;

/** The day totals that the plan states are those of the files' foods. */
record DayTotals() implements Inspection {
    @Override
    public String name() {
        return "day totals";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> {
            if (evidence.eaten().allCooked(seat.eater(), day)) {
                Stated.compare(
                        Say.day(seat, day),
                        evidence.session().totals(seat.eater(), day),
                        evidence.eaten().onDay(seat.eater(), day),
                        findings);
            } else {
                findings.add(Say.day(seat, day) + ": a dish is served that is not cooked for them");
            }
        });
    }
}
