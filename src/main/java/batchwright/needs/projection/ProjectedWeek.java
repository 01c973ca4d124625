package batchwright.needs.projection;

import batchwright.needs.dynamics.BodyState;
import java.util.Optional;

/**
 * The body at the end of a week.
 *
 * @param week 0 is now
 * @param likely when the total is as estimated
 * @param lightest when the total is at its upper end, so that the same food does less; empty once that body would leave the limits
 * @param heaviest when the total is at its lower end
 */
public record ProjectedWeek(int week, BodyState likely, Optional<BodyState> lightest, BodyState heaviest) {}
