package batchwright.person;

import java.util.Optional;

/**
 * Training with weights, as far as the eater says.
 *
 * @param timesAWeek how often; 0 means not at all
 * @param experience how long so far
 */
public record Training(Optional<Integer> timesAWeek, Optional<Experience> experience) {
    public static final Training NOT_SAID = new Training(Optional.empty(), Optional.empty());

    /** Whether the profile says that the eater does not train with weights. */
    public boolean saysNone() {
        return timesAWeek.filter(times -> times == 0).isPresent();
    }
}
