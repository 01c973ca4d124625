package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static final Optional<Money> NONE = Optional.empty();

    private static Optional<Money> cents(long minor) {
        return Optional.of(new Money(minor));
    }

    @Test
    void says_time_best_bound_and_difference() {
        // 52.30 is 3.20 above 49.10: 6.517 %
        assertThat(Progress.says(Duration.ofMillis(12_900), cents(5230), cents(4910), Currency.USD, false))
                .isEqualTo("12 s: best so far 52.30, proven: none below 49.10, difference 6.5 %");
    }

    @Test
    void says_only_what_is_known() {
        assertThat(Progress.says(Duration.ofSeconds(1), NONE, NONE, Currency.USD, false))
                .isEqualTo("1 s: no plan yet");
        assertThat(Progress.says(Duration.ofSeconds(2), NONE, cents(4000), Currency.USD, false))
                .isEqualTo("2 s: no plan yet, proven: none below 40.00");
        assertThat(Progress.says(Duration.ofSeconds(2), cents(5230), cents(0), Currency.USD, false))
                .isEqualTo("2 s: best so far 52.30, proven: none below 0.00");
    }

    @Test
    void fits_on_a_line() {
        String longest = Progress.says(Duration.ofHours(1), cents(99_999_999), cents(1), Currency.USD, false);

        assertThat(longest).hasSizeLessThan(100);
        assertThat(Progress.says(Duration.ofHours(1), cents(999_999), cents(300_000), Currency.USD, false))
                .hasSizeLessThan(80);
    }
}
