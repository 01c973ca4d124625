package batchwright.audit;

import batchwright.person.Eater;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Seat;
import java.util.List;
import java.util.stream.IntStream;

/** Every eater asked for is there once, with the target asked for, and every day once and in order. */
record EatersAndDays() implements Inspection {
    @Override
    public String name() {
        return "eaters and days";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        List<String> wanted = evidence.request().seats().stream()
                .map(seat -> seat.eater().id())
                .sorted()
                .toList();
        List<String> planned = evidence.session().eaters().stream()
                .map(eater -> eater.seat().eater().id())
                .sorted()
                .toList();
        if (!wanted.equals(planned)) {
            findings.add("planned for " + planned + ", asked for " + wanted);
        }
        for (EaterDays eater : evidence.session().eaters()) {
            inspectEater(evidence, eater, findings);
        }
        evidence.fills((batch, fill) -> {
            String who = fill.eater().map(Eater::id).orElse("nobody");
            if (evidence.known().seat(fill).isEmpty()) {
                findings.add(batch.dish().id() + " is packed for " + who + ", who does not eat here");
            }
        });
    }

    private static void inspectEater(Evidence evidence, EaterDays eater, Findings findings) {
        Eater who = eater.seat().eater();
        List<Integer> days = eater.days().stream().map(Day::day).toList();
        List<Integer> asked =
                IntStream.rangeClosed(1, evidence.request().days()).boxed().toList();
        if (!days.equals(asked)) {
            findings.add(who.name() + ": days " + days + ", asked for " + asked);
        }
        if (evidence.known()
                .seat(who)
                .map(Seat::target)
                .filter(eater.seat().target()::equals)
                .isEmpty()) {
            findings.add(who.name() + ": planned for another target than was asked for");
        }
    }
}
