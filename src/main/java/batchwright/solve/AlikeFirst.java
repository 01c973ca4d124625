package batchwright.solve;

import batchwright.food.Dish;
import batchwright.solve.mip.Completion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The choice of dishes for several eaters: each set that comes up is first tried with every day alike, which soon gives a plan;
 * then it waits until the thorough search begins, which has the best of these plans to measure by.
 */
final class AlikeFirst implements Completion<DaysSolution> {
    /** Later than any search lasts, but not never. */
    private static final long ONCE_THOROUGH = NEVER - 1;

    private final DishChoice choice;
    private final UnaryOperator<Found<DaysSolution>> improve;
    private final Set<Set<Dish>> tried = new HashSet<>();
    private final List<Found<DaysSolution>> alike = new ArrayList<>();
    private boolean thorough;

    /** @param improve makes a plan cheaper, if it can */
    AlikeFirst(DishChoice choice, UnaryOperator<Found<DaysSolution>> improve) {
        this.choice = choice;
        this.improve = improve;
    }

    /** The cheapest plans with every day alike, the cheapest first. */
    List<Found<DaysSolution>> cheapest(int most) {
        return alike.stream()
                .sorted(Comparator.comparingDouble(Found::cost))
                .limit(most)
                .toList();
    }

    /** From now on each set is searched to the end. */
    void beginThorough() {
        thorough = true;
    }

    @Override
    public Verdict<DaysSolution> complete(Point point, double cutoff) {
        if (thorough || !tried.add(choice.cooked(point.values()))) {
            Verdict<DaysSolution> verdict = choice.complete(point, cutoff);
            return new Verdict<>(verdict.found().map(improve), verdict.subproblems());
        }
        List<Subproblem> rest = new ArrayList<>(choice.othersThan(point));
        rest.add(choice.only(point, point.bound()));
        return new Verdict<>(tryAlike(point), rest);
    }

    private Optional<Found<DaysSolution>> tryAlike(Point point) {
        Optional<Found<DaysSolution>> found = choice.heuristic(point, Double.POSITIVE_INFINITY);
        found.ifPresent(alike::add);
        return found;
    }

    @Override
    public Optional<Found<DaysSolution>> heuristic(Point point, double cutoff) {
        return tried.add(choice.cooked(point.values())) ? tryAlike(point) : Optional.empty();
    }

    @Override
    public long postponedUntil(double[] lower, double[] upper) {
        return !thorough && choice.isDecided(lower, upper) && tried.contains(choice.cooked(lower))
                ? ONCE_THOROUGH
                : choice.postponedUntil(lower, upper);
    }

    @Override
    public long relaxations() {
        return choice.relaxations();
    }
}
