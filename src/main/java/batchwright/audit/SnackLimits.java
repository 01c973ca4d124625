package batchwright.audit;

import batchwright.food.Measure;
import batchwright.person.Wishes;
import batchwright.plan.Seat;
import batchwright.plan.Snack;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Snacks are on offer to their eater, and stay within the measures and kinds a day and each measure's own most. */
record SnackLimits() implements Inspection {
    @Override
    public String name() {
        return "snack limits";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> {
            String where = Say.day(seat, day);
            Map<Measure, Integer> counts = counts(evidence, day.snacks());
            counts.forEach((measure, count) -> inspectOne(where, seat, measure, count, findings));
            Wishes wishes = seat.eater().wishes();
            int all = counts.values().stream().mapToInt(Integer::intValue).sum();
            tooMany(where, all, "snack measures", wishes.snackMeasuresADay(), findings);
            tooMany(where, counts.size(), "kinds of snack", wishes.snackKindsADay(), findings);
        });
    }

    private static Map<Measure, Integer> counts(Evidence evidence, List<Snack> snacks) {
        Map<Measure, Integer> counts = new LinkedHashMap<>();
        for (Snack snack : snacks) {
            evidence.known().measure(snack.measure()).ifPresent(m -> counts.merge(m, snack.count(), Integer::sum));
        }
        return counts;
    }

    private static void inspectOne(String where, Seat seat, Measure measure, int count, Findings findings) {
        String what = measure.name() + " of " + measure.food().id();
        var only = seat.eater().wishes().snackFoods();
        if (measure.snackMost() < 1 || (only.isPresent() && !only.get().contains(measure.food()))) {
            findings.add(where + ": " + what + " is not offered as a snack");
        } else {
            tooMany(where, count, what, measure.snackMost(), findings);
        }
        if (count < 1) {
            findings.add(where + ": " + count + " " + what + " is no count");
        }
    }

    private static void tooMany(String where, int count, String of, int most, Findings findings) {
        if (count > most) {
            findings.add(where + ": " + count + " " + of + ", at most " + most);
        }
    }
}
