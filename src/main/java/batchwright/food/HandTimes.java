package batchwright.food;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Minutes of hand work that no dish writes down. All common practice for a home cook, plus or minus 40 %; none was measured.
 */
public final class HandTimes {
    /** To begin with, when containers are filled. */
    public static final double PORTION_START = 1;
    /** To weigh one component into one container, to 5 g on a scale. */
    public static final double PORTION_PART = 0.4;
    /** Of each container besides: set it up, wipe it, lid and label. */
    public static final double PORTION_CONTAINER = 0.4;
    /** To wash a pot, pan or tray by hand. */
    public static final double WASH_VESSEL = 2.5;
    /** To wash board, knife and bowl. */
    public static final double WASH_BOARD = 0.6;
    /** The last wipe of the kitchen. */
    public static final double WIPE = 8;
    /** What is less than this above whole minutes is not rounded up: it comes from dividing. */
    public static final double TOLERANCE = 0.001;

    /** Between two loads in a pan. */
    public static final double BETWEEN_LOADS = 1;

    public static final double GRAMS_PER_KG = 1000;

    /** The hands serve two pans at most. */
    private static final int MOST_PANS = 2;

    private HandTimes() {}

    /** How many pans the hands serve at once in a kitchen. */
    public static int pansAtOnce(Equipment equipment) {
        int pans = Math.min(equipment.pans().size(), equipment.hob().burners());
        return Math.max(1, Math.min(MOST_PANS, pans));
    }

    /** What the largest pan of a kitchen holds, in pans of 28 cm; one of these where there is none. */
    public static double panSize(Equipment equipment) {
        return equipment.pans().isEmpty()
                ? 1
                : equipment.pans().get(0).doubleValue() / Equipment.USUAL_PAN.doubleValue();
    }

    /** Whether portioning and washing-up of this dish are counted: where the minutes of every step follow a law. */
    public static boolean areCounted(Dish dish) {
        return dish.steps().stream().noneMatch(step -> step.isForFive() && !step.dayBefore());
    }

    /** Whether a step dirties a vessel of its own: it heats, and does not go on where the step before it left off. */
    public static boolean dirtiesVessel(Dish dish, Step step) {
        return heats(step)
                && (step.way().uses(Appliance.OVEN)
                        || step.after().stream()
                                .map(number -> dish.steps().get(number - 1))
                                .noneMatch(
                                        before -> heats(before) && !before.way().uses(Appliance.OVEN)));
    }

    /** Whether a step dirties a board or a bowl: it begins with hand work. */
    public static boolean dirtiesBoard(Step step) {
        return !step.dayBefore() && step.way().laws().stream().anyMatch(law -> law instanceof TimeLaw.HandWork);
    }

    private static boolean heats(Step step) {
        return !step.dayBefore() && step.way().on().isPresent();
    }

    /** Minutes to wash up what one step dirties. */
    public static double washing(Dish dish, Step step) {
        return (dirtiesVessel(dish, step) ? WASH_VESSEL : 0) + (dirtiesBoard(step) ? WASH_BOARD : 0);
    }

    /** Whole minutes, rounded up. */
    public static int whole(double minutes) {
        return (int) Math.ceil(minutes - TOLERANCE);
    }

    /** Numbers of the steps that put the dish into its containers, the first being 1. */
    public static List<Integer> filling(Dish dish) {
        return IntStream.rangeClosed(1, dish.steps().size())
                .filter(number -> dish.steps().get(number - 1).fills())
                .boxed()
                .toList();
    }
}
