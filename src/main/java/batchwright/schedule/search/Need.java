package batchwright.schedule.search;

/**
 * What an activity takes of a resource, from its start on.
 *
 * @param resource index of the resource
 * @param amount units of it, at least 1
 * @param minutes how long, at least 1; no longer than the activity
 */
public record Need(int resource, int amount, int minutes) {
    public Need {
        if (resource < 0 || amount < 1 || minutes < 1) {
            throw new IllegalArgumentException("need of resource (" + resource + "), amount (" + amount + "), minutes ("
                    + minutes + ") must be at least 0, 1 and 1.");
        }
    }
}
