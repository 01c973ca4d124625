package batchwright.schedule;

import java.util.Optional;

/**
 * What a step takes for a batch.
 *
 * @param minutes from start to end
 * @param handsOnMinutes the first of them, which take the cook's hands
 * @param places burners or shelves it occupies at once; 0 when it occupies none
 * @param loads how a batch is divided that does not go in all at once; empty when it does
 */
public record StepWork(int minutes, int handsOnMinutes, int places, Optional<Loads> loads) {
    /**
     * A batch divided into equal loads.
     *
     * @param vessel what holds one: pan, pot, tray, load
     * @param number at least 2
     * @param atOnce side by side
     * @param gramsEach of raw food
     */
    public record Loads(String vessel, int number, int atOnce, int gramsEach) {}
}
