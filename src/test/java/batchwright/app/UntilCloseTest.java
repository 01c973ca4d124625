package batchwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class UntilCloseTest {
    /** 102.00 is 2 % above 100.00. */
    @Test
    void ends_when_the_difference_is_as_small_as_asked() {
        var watch = new UntilClose(Watch.NONE, Optional.of(new BigDecimal("2")));

        assertThat(watch.stop()).isFalse();
        watch.found(new Money(10_200));
        assertThat(watch.stop()).isFalse();
        watch.bound(new Money(9_999));
        assertThat(watch.stop()).isFalse();
        watch.bound(new Money(10_000));
        assertThat(watch.stop()).isTrue();
    }

    @Test
    void searches_to_the_end_when_nothing_is_asked() {
        var watch = new UntilClose(Watch.NONE, Optional.empty());

        watch.found(new Money(10_000));
        watch.bound(new Money(10_000));

        assertThat(watch.stop()).isFalse();
    }

    @Test
    void a_bound_of_nothing_is_never_close() {
        var watch = new UntilClose(Watch.NONE, Optional.of(new BigDecimal("100")));

        watch.found(new Money(1));
        watch.bound(Money.ZERO);

        assertThat(watch.stop()).isFalse();
    }

    @Test
    void who_limits_the_work_behind_it_is_asked_with_the_work() {
        var byWork = new Watch() {
            @Override
            public boolean stop() {
                return false;
            }

            @Override
            public boolean stop(long work) {
                return work > 5;
            }
        };

        assertThat(new UntilClose(byWork, Optional.empty()).stop(5)).isFalse();
        assertThat(new UntilClose(byWork, Optional.empty()).stop(6)).isTrue();
    }
}
