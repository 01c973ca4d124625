package batchwright.food;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A way to do a step.
 *
 * @param on what it occupies from start to end; empty for hands and time alone
 * @param celsius temperature of the oven, when that is used
 * @param shelves of the oven that it fills at least, when that is used; 1 otherwise
 * @param laws of its minutes, one after another
 * @param pot what the pot has to hold, where one is too small for a large batch
 */
public record Way(Optional<Appliance> on, OptionalInt celsius, int shelves, List<TimeLaw> laws, Optional<Volume> pot) {
    /**
     * What fills a pot.
     *
     * @param litresPerKg of the raw food, water counted
     */
    public record Volume(double litresPerKg, List<Handled> of) {
        public Volume {
            of = List.copyOf(of);
        }
    }

    public Way {
        laws = List.copyOf(laws);
    }

    public boolean uses(Appliance appliance) {
        return on.filter(a -> a == appliance).isPresent();
    }

    /** Whether its minutes are only written for five containers. */
    public boolean isForFive() {
        return laws.stream().anyMatch(law -> law instanceof TimeLaw.ForFive);
    }
}
