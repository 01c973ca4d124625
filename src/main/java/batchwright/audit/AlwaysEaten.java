package batchwright.audit;

import batchwright.food.Measure;
import java.util.LinkedHashMap;
import java.util.Map;

/** What an eater eats every day anyway stands on each of their days. */
record AlwaysEaten() implements Inspection {
    private record Name(String food, String measure) {
        static Name of(Measure measure) {
            return new Name(measure.food().id(), measure.name());
        }

        @Override
        public String toString() {
            return measure + " of " + food;
        }
    }

    @Override
    public String name() {
        return "always eaten";
    }

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> {
            Map<Name, Integer> wanted = new LinkedHashMap<>();
            seat.eater().wishes().always().forEach(a -> wanted.merge(Name.of(a.measure()), a.count(), Integer::sum));
            Map<Name, Integer> planned = new LinkedHashMap<>();
            day.always().forEach(s -> planned.merge(Name.of(s.measure()), s.count(), Integer::sum));
            if (!wanted.equals(planned)) {
                findings.add(Say.day(seat, day) + ": " + planned + ", always eaten is " + wanted);
            }
        });
    }
}
