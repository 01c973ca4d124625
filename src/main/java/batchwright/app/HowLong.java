package batchwright.app;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;

/**
 * How long to search for a plan.
 *
 * @param patience at most
 * @param within and only until the plan is proven to cost at most so many per cent more than any other
 */
public record HowLong(Duration patience, Optional<BigDecimal> within) {
    /** To the proof, if there is time. */
    public HowLong(Duration patience) {
        this(patience, Optional.empty());
    }
}
