package batchwright.schedule;

import batchwright.food.Step;

/**
 * What a step takes for a number of containers. Steps are written for {@link Step#FOR_CONTAINERS}; fewer take as long. Of more,
 * the hands-on minutes grow in proportion, and so do trays, to the nearest whole one; what the oven cannot hold at once goes in one
 * lot after another. Pots are larger, and wait as long. A choice, to be simple: nothing of it is measured.
 */
record BatchWork(Step step, int containers) {
    int handsOnMinutes() {
        return grown(step.handsOnMinutes());
    }

    int minutes(Equipment equipment) {
        return handsOnMinutes() + (step.minutes() - step.handsOnMinutes()) * lots(equipment);
    }

    /** Shelves it occupies at once. */
    int shelves(Equipment equipment) {
        return Math.min(trays(), equipment.shelves());
    }

    private int lots(Equipment equipment) {
        return inOven() ? (trays() + equipment.shelves() - 1) / equipment.shelves() : 1;
    }

    private int trays() {
        return Math.max(
                step.shelves(), (2 * step.shelves() * containers + Step.FOR_CONTAINERS) / (2 * Step.FOR_CONTAINERS));
    }

    private boolean inOven() {
        return step.appliance().filter(a -> a == Step.Appliance.OVEN).isPresent();
    }

    private int grown(int minutes) {
        int all = minutes * containers;
        return Math.max(minutes, (all + Step.FOR_CONTAINERS - 1) / Step.FOR_CONTAINERS);
    }
}
