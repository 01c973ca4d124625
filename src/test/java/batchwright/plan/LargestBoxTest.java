package batchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import batchwright.food.Equipment;
import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.limit.Setting;
import batchwright.limit.TestTarget;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The smaller of a kitchen's box and what the eater allows. 88 % of 1000 ml are 880 ml. */
class LargestBoxTest {
    private static final DayTarget TARGET =
            new DayTarget(2000, List.of(limit(Nutrient.COOKED_WEIGHT, 900), limit(Nutrient.VOLUME, 1050)));

    private static Limit limit(Nutrient size, int most) {
        return TestTarget.limit("box", Scope.CONTAINER, size)
                .with(Range.atMost(most))
                .changedBy(new Setting.AtMost("box", size.unit(), 2000));
    }

    private static DayTarget on(int ml, int g) {
        return LargestBox.on(
                TARGET,
                new Equipment.Limits(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.of(ml), OptionalInt.of(g)));
    }

    @Test
    void a_small_box_binds_and_the_profile_cannot_change_it() {
        assertThat(on(1000, 700).limits())
                .extracting(
                        limit -> limit.range().mostOrInfinity(),
                        limit -> limit.setting().isPresent())
                .containsExactly(tuple(700.0, false), tuple(880.0, false));
    }

    @Test
    void a_large_box_changes_nothing() {
        assertThat(on(1500, 1500)).isEqualTo(TARGET);
        assertThat(LargestBox.on(TARGET, Equipment.Limits.NONE)).isEqualTo(TARGET);
    }
}
