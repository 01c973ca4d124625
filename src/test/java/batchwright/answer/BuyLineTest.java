package batchwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Food;
import batchwright.food.Nutrients;
import batchwright.food.Pack;
import batchwright.plan.Purchase;
import batchwright.plan.TestSession;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BuyLineTest {
    private static final Food RICE = new Food(
            "rice", "rice", "grain", Optional.empty(), "rice", Nutrients.NONE, BigDecimal.ZERO, Set.of(), false);

    private static Pack pack(int grams, long minor) {
        return new Pack(
                RICE, "shop", "bag", BigDecimal.valueOf(grams), new Money(minor), LocalDate.of(2026, 11, 21), "");
    }

    private static List<BuyLine> lines(Map<Pack, Integer> packs, String used, String pantry) {
        var purchase = new Purchase(RICE, packs, new BigDecimal(used), new BigDecimal(pantry));
        return BuyLine.of(TestSession.of(List.of(), List.of(), List.of(purchase)));
    }

    @Test
    void a_food_from_the_pantry_alone_has_one_line_without_a_pack() {
        BuyLine line = lines(Map.of(), "120.04", "120.04").get(0);

        assertThat(line.pack()).isEmpty();
        assertThat(line.cost()).isEqualTo(Money.ZERO);
        assertThat(line.usedGrams()).isEqualByComparingTo("120.0");
        assertThat(line.leftGrams()).isZero();
    }

    /** 100 g at home, 1 x 500 g and 2 x 200 g bought, 750 g used: the big bag is used up, of the small ones 250 g are left. */
    @Test
    void two_sizes_of_pack_share_what_is_used() {
        var packs = new LinkedHashMap<Pack, Integer>();
        packs.put(pack(500, 199), 1);
        packs.put(pack(200, 99), 2);

        List<BuyLine> lines = lines(packs, "750", "100");

        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).usedGrams()).isEqualByComparingTo("600");
        assertThat(lines.get(0).leftGrams()).isZero();
        assertThat(lines.get(0).fromPantryGrams()).isEqualByComparingTo("100");
        assertThat(lines.get(1).usedGrams()).isEqualByComparingTo("150");
        assertThat(lines.get(1).leftGrams()).isEqualByComparingTo("250");
        assertThat(lines.get(1).fromPantryGrams()).isZero();
        assertThat(lines.get(1).cost()).isEqualTo(new Money(198));
    }

    @Test
    void what_is_left_is_never_below_nothing_by_rounding() {
        assertThat(lines(Map.of(pack(500, 199), 1), "499.96", "0").get(0).leftGrams())
                .isZero();
    }
}
