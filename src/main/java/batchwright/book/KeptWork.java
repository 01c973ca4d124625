package batchwright.book;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The order of work of a cooking session as it was kept. Minutes count from its start.
 *
 * @param day of the plan on which it cooks
 * @param minutes until all is done
 */
public record KeptWork(int day, int minutes, List<KeptStep> steps) {
    public KeptWork {
        steps = List.copyOf(steps);
    }

    /**
     * @param number in the recipe of the dish; empty for what no recipe says: to fill, to wash up
     * @param place burner 2; empty where none is used
     * @param loads how the batch is divided; empty when it is not
     */
    public record KeptStep(
            Minutes at, String dish, OptionalInt number, String text, Where place, List<Taken> with, Optional<Loads> loads) {
        public KeptStep {
            with = List.copyOf(with);
        }
    }

    /** @param handsOnUntil from then on it goes on by itself */
    public record Minutes(int start, int handsOnUntil, int end) {
        public int all() {
            return end - start;
        }
    }

    /** @param on burner, oven or another appliance; empty for none */
    public record Where(Optional<String> on, List<Integer> places, OptionalInt celsius) {
        public Where {
            places = List.copyOf(places);
        }
    }

    /**
     * What a step takes in hand.
     *
     * @param what short name of a food or part; name of a staple
     * @param grams raw and edible; empty for what goes in to taste
     */
    public record Taken(String what, Optional<BigDecimal> grams) {}

    /** So many vessels of so many grams each. */
    public record Loads(String vessel, int number, int atOnce, int gramsEach) {}
}
