package batchwright.explain.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;

/** Which levels are worth solving for: round figures on both sides of what is in force. */
final class Levels {
    private static final int BELOW = 3;
    /** Budgets rise by at most a twenty-fifth of the cost. */
    private static final int STEPS_TO_DOUBLE = 25;

    private Levels() {}

    /** Multiples of a step on both sides of what is in force, as changes of it. */
    static NavigableSet<Long> around(long inForce, long step, LongPredicate allowed) {
        var levels = new TreeSet<Long>(Set.of(0L));
        long below = Math.floorDiv(inForce - 1, step) * step - inForce;
        long above = (Math.floorDiv(inForce, step) + 1) * step - inForce;
        LongStream.range(0, BELOW).map(i -> below - i * step).filter(allowed).forEach(levels::add);
        LongStream.range(0, Frontier.MOST_POINTS - BELOW - 1)
                .map(i -> above + i * step)
                .filter(allowed)
                .forEach(levels::add);
        return levels;
    }

    /** What is in force, what is above it, then the lowest first: when that costs as much, so do those between. */
    static List<Long> upThenDown(NavigableSet<Long> levels) {
        List<Long> order = new ArrayList<>(levels.tailSet(0L, true));
        order.addAll(levels.headSet(0L, false));
        return order;
    }

    /** Between budgets [minor units]. */
    static long step(long cost) {
        return round(cost / STEPS_TO_DOUBLE);
    }

    /** The largest of 1, 2, 5, 10, 20, 50 and so on that is no more than this; 1 when none is. */
    static long round(long most) {
        long power = 1;
        while (power * 10 <= most) {
            power *= 10;
        }
        long unit = power;
        return LongStream.of(5, 2, 1)
                .map(i -> i * unit)
                .filter(i -> i <= most)
                .findFirst()
                .orElse(unit);
    }
}
