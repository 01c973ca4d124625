package batchwright.limit;

import batchwright.food.Nutrient;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What an eater is to get: an aim, and the limits around it.
 *
 * @param energyAimKcal energy of a day
 * @param limits in the order in which people see them; at most one for each scope and measure
 */
public record DayTarget(int energyAimKcal, List<Limit> limits) {
    public DayTarget {
        limits = List.copyOf(limits);
        Set<String> ids = new LinkedHashSet<>();
        for (Limit limit : limits) {
            if (!ids.add(limit.id())) {
                throw new IllegalArgumentException("limits (" + limit.id() + ") must each have another id.");
            }
        }
    }

    public List<Limit> limits(Scope scope) {
        return limits.stream().filter(limit -> limit.scope() == scope).toList();
    }

    /** Limits that say something of days, one for each measure: on each day or, where there is none, on the mean. */
    public List<Limit> shown() {
        return limits.stream()
                .filter(limit -> limit.scope() == Scope.DAY
                        || (limit.scope() == Scope.MEAN_OF_DAYS
                                && limit(Scope.DAY, limit.measured()).isEmpty()))
                .toList();
    }

    public Optional<Limit> limit(Scope scope, Nutrient measured) {
        return limits.stream().filter(limit -> limit.isOn(scope, measured)).findFirst();
    }

    /** What the limit allows; anything where there is none. */
    public Range range(Scope scope, Nutrient measured) {
        return limit(scope, measured).map(Limit::range).orElse(Range.ANY);
    }

    /** What each day may hold. */
    public Range day(Nutrient measured) {
        return range(Scope.DAY, measured);
    }

    /** With another range of a limit; the same where there is no such limit. */
    public DayTarget with(Scope scope, Nutrient measured, Range range) {
        return new DayTarget(
                energyAimKcal,
                limits.stream()
                        .map(limit -> limit.isOn(scope, measured) ? limit.with(range) : limit)
                        .toList());
    }

    public DayTarget with(Limit limit, Range range) {
        return with(limit.scope(), limit.measured(), range);
    }

    /** What amounts should come near to, besides keeping the limit. */
    public OptionalInt aim(Limit limit) {
        boolean hasAim = limit.measured() == Nutrient.ENERGY && limit.scope() != Scope.CONTAINER;
        return hasAim ? OptionalInt.of(energyAimKcal) : OptionalInt.empty();
    }

    /** What a day's amount is compared with: the aim or, where there is none, a floor; empty for other limits. */
    public OptionalInt mark(Limit limit) {
        OptionalInt aim = aim(limit);
        return aim.isPresent()
                        || limit.scope() != Scope.DAY
                        || limit.range().most().isPresent()
                ? aim
                : OptionalInt.of(limit.range().least());
    }
}
