package batchwright.audit;

import batchwright.food.Measure;
import batchwright.person.Wishes;
import batchwright.plan.Day;
import batchwright.plan.Seat;
import batchwright.plan.Snack;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Every spread of a day has something to be eaten on, and of snacks that are alike a day has one only. */
record SnackPairs() implements Inspection {
    @Override
    public String name() {
        return "snack pairs";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> {
            if (!seat.eater().wishes().meals().anySnacks()) {
                inspect(evidence, seat, day, findings);
            }
        });
    }

    private static void inspect(Evidence evidence, Seat seat, Day day, Findings findings) {
        int spreads = 0;
        int carriers = 0;
        Map<String, Set<Measure>> alike = new LinkedHashMap<>();
        for (Snack snack : day.snacks()) {
            Optional<Measure> measure = evidence.known().measure(snack.measure());
            String kind = measure.map(Measure::snackKind).orElse("");
            switch (kind) {
                case "" -> {}
                case "spread" -> spreads += snack.count();
                case "carrier" -> carriers += snack.count();
                default ->
                    alike.computeIfAbsent(kind, k -> new LinkedHashSet<>()).add(measure.orElseThrow());
            }
        }
        for (Wishes.Always always : seat.eater().wishes().always()) {
            carriers += always.measure().snackKind().equals("carrier") ? always.count() : 0;
        }
        if (spreads > 2 * carriers) {
            findings.add(Say.day(seat, day) + ": " + spreads + " measures of spreads, and " + carriers
                    + " to eat them on, each for two");
        }
        alike.forEach((kind, measures) -> {
            if (measures.size() > 1) {
                findings.add(Say.day(seat, day) + ": more than one snack of the kind " + kind);
            }
        });
    }
}
