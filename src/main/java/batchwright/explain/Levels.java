package batchwright.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Which levels are worth solving for: round figures on both sides of what is in force. */
final class Levels {
    private static final int BELOW = 3;
    /** Budgets rise by at most a twenty-fifth of the cost. */
    private static final int STEPS_TO_DOUBLE = 25;

    private Levels() {}

    /** Multiples of a step on both sides of what is in force, as changes of it. */
    static NavigableSet<Integer> around(int inForce, int step, IntPredicate allowed) {
        var levels = new TreeSet<Integer>(Set.of(0));
        int below = Math.floorDiv(inForce - 1, step) * step - inForce;
        int above = (Math.floorDiv(inForce, step) + 1) * step - inForce;
        IntStream.range(0, BELOW).map(i -> below - i * step).filter(allowed).forEach(levels::add);
        IntStream.range(0, Frontier.MOST_POINTS - BELOW - 1)
                .map(i -> above + i * step)
                .filter(allowed)
                .forEach(levels::add);
        return levels;
    }

    /** What is in force, what is above it, and then the lowest first: when it costs as much, so do those between. */
    static List<Integer> upThenDown(NavigableSet<Integer> levels) {
        List<Integer> order = new ArrayList<>(levels.tailSet(0, true));
        order.addAll(levels.headSet(0, false));
        return order;
    }

    /** 1, 2 or 5 times a power of ten [cents]. */
    static int step(int cents) {
        int power = 1;
        while (power * 10 * STEPS_TO_DOUBLE <= cents) {
            power *= 10;
        }
        int unit = power;
        return IntStream.of(5, 2, 1)
                .map(i -> i * unit)
                .filter(i -> i * STEPS_TO_DOUBLE <= cents)
                .findFirst()
                .orElse(unit);
    }
}
