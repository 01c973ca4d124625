package batchwright.food;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One step of a dish's method, in the order of work.
 *
 * @param text what to do
 * @param ways to do it, the usual one first; more than one where another appliance serves
 * @param with what it takes in hand for the first time, in the order of the method; empty where the dish does not say
 * @param after numbers of the steps that must be done, the first step being 1; only earlier ones
 * @param fills puts the dish into its containers
 * @param dayBefore done the evening before the cooking day: soaking, thawing, marinating
 * @param parts names of the dish's parts that it is for: it falls away when no container has any of them; empty when it never does
 */
public record Step(
        String text,
        List<Way> ways,
        List<Handled> with,
        List<Integer> after,
        boolean fills,
        boolean dayBefore,
        List<String> parts) {
    /** What minutes that follow no law are meant for: one eater and a working week. A choice; a dish need not say it. */
    public static final int FOR_CONTAINERS = 5;

    public Step {
        ways = List.copyOf(ways);
        with = List.copyOf(with);
        after = List.copyOf(after);
        parts = List.copyOf(parts);
        if (ways.isEmpty()) {
            throw new IllegalArgumentException("ways must not be empty.");
        }
    }

    /** The usual one. */
    public Way way() {
        return ways.get(0);
    }

    /** The one that this kitchen takes: what saves a burner or time first; empty when it has nothing to do it with. */
    public Optional<Way> way(Equipment equipment) {
        return ways.stream()
                .filter(w -> w.on().filter(equipment::has).isPresent() || w.on().isEmpty())
                .min(Comparator.comparing(
                        w -> w.on().filter(Appliance::isPreferred).isEmpty()));
    }

    /** What it is done on, in words: oven or air fryer. */
    public String needs() {
        return ways.stream()
                .flatMap(way -> way.on().stream())
                .map(Appliance::label)
                .distinct()
                .collect(Collectors.joining(" or "));
    }

    /** Whether its minutes are only written for five containers. */
    public boolean isForFive() {
        return way().isForFive();
    }
}
