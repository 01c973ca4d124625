package batchwright.solve.dish;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Goes through every fill of a container that may be as good as the best so far: least cost, then nearest to the energy asked
 * for (without one, to the protein), then least cost of leftovers that spoil, then fewest packs. A fixed number of looks, so
 * that the choice depends on the files alone; for home dishes it gets to the end.
 */
final class BestFill {
    private static final int MOST_LOOKS = 4_000_000;

    private final DishRequest request;
    private final Needed needed;
    private final List<Food> foods;
    private final List<Shelf> shelves;
    private final List<Level> levels = new ArrayList<>();
    private final int[] steps;
    private int[] best;
    private Score bestScore;
    private int looks;

    /**
     * One part.
     *
     * @param choices numbers of steps, those near the fill it starts from first
     * @param least what it and those after it add at least to a container
     * @param most what they add at most
     */
    private record Level(int place, int[] choices, Sum step, Sum least, Sum most) {}

    /** What is in a container, and what all containers use of each food [g as purchased]. */
    private record Sum(double kcal, double protein, double fat, double[] used) {
        Sum plus(Sum other, int times) {
            double[] more = used.clone();
            for (int f = 0; f < more.length; f++) {
                more[f] += times * other.used[f];
            }
            return new Sum(kcal + times * other.kcal, protein + times * other.protein, fat + times * other.fat, more);
        }
    }

    private record Score(long minor, double distance, double spoiled, int packs) {
        boolean isBetterThan(Score other) {
            if (minor != other.minor) {
                return minor < other.minor;
            }
            if (Math.abs(distance - other.distance) > Needed.HAIR) {
                return distance < other.distance;
            }
            if (Math.abs(spoiled - other.spoiled) > Needed.HAIR) {
                return spoiled < other.spoiled;
            }
            return packs < other.packs;
        }
    }

    private BestFill(DishRequest request, List<Integer> sofar) {
        this.request = request;
        this.needed = new Needed(request);
        this.foods = List.copyOf(needed.foods());
        this.shelves = foods.stream()
                .map(food -> new Shelf(request.kitchen(), food, mostUsed(food)))
                .toList();
        best = sofar.stream().mapToInt(Integer::intValue).toArray();
        levels();
        steps = best.clone();
        Sum sum = nothing();
        for (Level level : levels) {
            sum = sum.plus(level.step, best[level.place]);
        }
        bestScore = score(sum);
    }

    /**
     * @param sofar a fill that is as asked: steps of each part, in the dish's order
     * @return the best fill
     */
    static List<Integer> from(DishRequest request, List<Integer> sofar) {
        var search = new BestFill(request, sofar);
        search.look(0, search.nothing());
        return Arrays.stream(search.best).boxed().toList();
    }

    private double mostUsed(Food food) {
        return needed.parts().stream()
                .mapToDouble(p -> needed.most(p) * needed.usedByStep(p, food))
                .sum();
    }

    private Sum nothing() {
        return new Sum(0, 0, 0, new double[foods.size()]);
    }

    /** The part with the most choices comes last: there, most are ruled out by the energy. */
    private void levels() {
        List<Part> parts = needed.parts();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            places.add(i);
        }
        places.sort(Comparator.comparingInt(i -> -needed.most(parts.get(i)) + needed.fewest(parts.get(i))));
        Sum least = nothing();
        Sum most = nothing();
        for (int place : places) {
            Part part = parts.get(place);
            Sum step = inStep(part);
            least = least.plus(step, needed.fewest(part));
            most = most.plus(step, needed.most(part));
            levels.add(0, new Level(place, nearFirst(needed.choices(part), best[place]), step, least, most));
        }
    }

    private static int[] nearFirst(int[] choices, int from) {
        return Arrays.stream(choices)
                .boxed()
                .sorted(Comparator.comparingInt(count -> Math.abs(count - from)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private Sum inStep(Part part) {
        return new Sum(
                Needed.inStep(part, Nutrient.ENERGY),
                Needed.inStep(part, Nutrient.PROTEIN),
                Needed.inStep(part, Nutrient.FAT),
                foods.stream().mapToDouble(f -> needed.usedByStep(part, f)).toArray());
    }

    private void look(int depth, Sum sofar) {
        if (depth == levels.size()) {
            Score score = score(sofar);
            if (score.isBetterThan(bestScore)) {
                bestScore = score;
                best = steps.clone();
            }
            return;
        }
        Level level = levels.get(depth);
        for (int count : level.choices) {
            if (looks++ >= MOST_LOOKS) {
                return;
            }
            steps[level.place] = count;
            Sum next = sofar.plus(level.step, count);
            if (mayBeBest(depth + 1, next)) {
                look(depth + 1, next);
            }
        }
    }

    /** Whether something as asked and as good as the best so far may lie below. */
    private boolean mayBeBest(int depth, Sum sofar) {
        boolean all = depth == levels.size();
        Sum least = all ? sofar : sofar.plus(levels.get(depth).least, 1);
        Sum most = all ? sofar : sofar.plus(levels.get(depth).most, 1);
        if (!isAsAsked(least, most)) {
            return false;
        }
        long minor = minor(least);
        return minor < bestScore.minor
                || (minor == bestScore.minor && distance(least, most) <= bestScore.distance + Needed.HAIR);
    }

    private boolean isAsAsked(Sum least, Sum most) {
        ContainerWish wish = request.wish();
        return wish.energy()
                        .map(band -> least.kcal <= band.mostKcal().doubleValue() + Needed.HAIR
                                && most.kcal >= band.leastKcal().doubleValue() - Needed.HAIR)
                        .orElse(true)
                && wish.proteinLeastG()
                        .map(floor -> most.protein >= floor.doubleValue() - Needed.HAIR)
                        .orElse(true)
                && wish.fatMostG()
                        .map(ceiling -> least.fat <= ceiling.doubleValue() + Needed.HAIR)
                        .orElse(true);
    }

    private Score score(Sum sum) {
        long minor = minor(sum);
        double spoiled = 0;
        int packs = 0;
        for (int f = 0; f < sum.used.length && minor < Long.MAX_VALUE; f++) {
            spoiled += shelves.get(f).spoiledMinor(sum.used[f]);
            packs += shelves.get(f).packs(sum.used[f]);
        }
        return new Score(minor, distance(sum, sum), spoiled, packs);
    }

    /** Least cost of having so much of each food [minor units]; {@link Long#MAX_VALUE} when one cannot be had. */
    private long minor(Sum sum) {
        long minor = 0;
        for (int f = 0; f < sum.used.length; f++) {
            long here = shelves.get(f).minor(sum.used[f]);
            if (here == Long.MAX_VALUE) {
                return here;
            }
            minor += here;
        }
        return minor;
    }

    /** Distance from what is asked to the nearest of the range: in kcal or, without them, g of protein. */
    private double distance(Sum least, Sum most) {
        ContainerWish wish = request.wish();
        if (wish.energy().isPresent()) {
            return distance(wish.energy().get().aimKcal().doubleValue(), least.kcal, most.kcal);
        }
        return wish.proteinLeastG()
                .map(floor -> distance(floor.doubleValue(), least.protein, most.protein))
                .orElse(0.0);
    }

    private static double distance(double aim, double least, double most) {
        return Math.max(0, Math.max(least - aim, aim - most));
    }
}
