package batchwright.plan;

import batchwright.food.Equipment;
import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Reason;
import batchwright.limit.Scope;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * No container holds more than fits the largest box of a kitchen, or than the eater allows: the smaller counts. A box
 * is filled to 88 %, for the lid and stirring: common practice.
 */
public final class LargestBox {
    private static final int USABLE_PERCENT = 88;
    private static final int PER_CENT = 100;

    private LargestBox() {}

    public static DayTarget on(DayTarget target, Equipment.Limits limits) {
        OptionalInt usable = limits.boxMillilitres().isPresent()
                ? OptionalInt.of(limits.boxMillilitres().getAsInt() * USABLE_PERCENT / PER_CENT)
                : OptionalInt.empty();
        return new DayTarget(
                target.energyAimKcal(),
                target.limits().stream()
                        .map(limit -> smaller(limit, Nutrient.COOKED_WEIGHT, limits.boxGrams()))
                        .map(limit -> smaller(limit, Nutrient.VOLUME, usable))
                        .toList());
    }

    private static Limit smaller(Limit limit, Nutrient size, OptionalInt most) {
        boolean binds = limit.scope() == Scope.CONTAINER
                && limit.measured() == size
                && most.isPresent()
                && most.getAsInt() < limit.range().mostOrInfinity();
        return binds
                ? new Limit(
                        limit.name(),
                        limit.scope(),
                        size,
                        Range.atMost(most.orElseThrow()),
                        new Reason("", "foods/kitchen.yaml"),
                        Optional.empty())
                : limit;
    }
}
