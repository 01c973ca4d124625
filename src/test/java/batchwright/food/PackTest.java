package batchwright.food;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackTest {
    private static final Food ONION = new Food(
            "onion", "onion", "vegetable", Optional.empty(), "onion", Nutrients.NONE, BigDecimal.TEN, Set.of(), true);
    private static final LocalDate SEEN = LocalDate.of(2026, 5, 29);

    private static Pack pack(String grams, long minor) {
        return new Pack(ONION, "shop", "bag", new BigDecimal(grams), new Money(minor), SEEN, "");
    }

    /** Worked out on paper: price x step / grams, up to the next whole cent. */
    @ParameterizedTest(name = "{0} cents for {1} g, {2} g at a time")
    @CsvSource({"499, 1000, 50, 25", "500, 1000, 50, 25", "501, 1000, 50, 26", "299, 454, 100, 66", "1, 1000, 10, 1"})
    void a_step_of_loose_goods_costs_whole_cents_never_less_than_its_share(
            long minor, String grams, String step, long expected) {
        Pack loose = pack(grams, minor).looseBy(new BigDecimal(step));

        assertThat(loose.price()).isEqualTo(new Money(expected));
        assertThat(loose.grams()).isEqualByComparingTo(step);
        assertThat(loose.tag()).isEqualTo(new PriceTag(new BigDecimal(grams), new Money(minor)));
    }

    @Test
    void a_multipack_counts_the_drained_weight_of_each() {
        BigDecimal can = BigDecimal.valueOf(400);

        assertThat(new Contents(4, can, Optional.empty()).grams()).isEqualByComparingTo("1600");
        assertThat(new Contents(4, can, Optional.of(BigDecimal.valueOf(240))).grams())
                .isEqualByComparingTo("960");
    }

    /** 2026-05-29 and 180 days are 2026-11-25: 2 days of May, 30, 31, 31, 30, 31 and 25. */
    @Test
    void a_price_is_stale_after_180_days() {
        assertThat(pack("500", 199).isStaleOn(LocalDate.of(2026, 11, 25))).isFalse();
        assertThat(pack("500", 199).isStaleOn(LocalDate.of(2026, 11, 26))).isTrue();
    }

    @Test
    void a_lot_may_be_used_on_its_date_and_not_after() {
        var lot = new Lot(BigDecimal.TEN, Optional.of(SEEN));

        assertThat(lot.keepsUntil(SEEN)).isTrue();
        assertThat(lot.keepsUntil(SEEN.plusDays(1))).isFalse();
        assertThat(Lot.of(BigDecimal.TEN).keepsUntil(LocalDate.MAX)).isTrue();
    }
}
