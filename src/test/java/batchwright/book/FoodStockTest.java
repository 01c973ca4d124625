package batchwright.book;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Counted on paper, with foods of the starter kitchen. */
class FoodStockTest {
    private static final Kitchen KITCHEN = KitchenReader.read(new StarterFiles(), LocalDate.of(2026, 11, 25))
            .value()
            .orElseThrow();
    private static final Map<Food, List<Lot>> NOTHING = Map.of();

    private static Food food(String id) {
        return Optional.ofNullable(KITCHEN.foods().get(id)).orElseThrow();
    }

    private static FoodStock of(Map<Food, List<Lot>> before, String... lines) {
        return FoodStock.of(BookOf.lines(lines), before, KITCHEN.foods());
    }

    private static BigDecimal grams(FoodStock stock, String id) {
        return stock.lots().getOrDefault(food(id), List.of()).stream()
                .map(Lot::grams)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Test
    void bought_less_cooked_less_thrown_away() {
        var stock = of(
                NOTHING,
                "2026-11-29 bought 2 x 907 g white_rice for 4.38",
                "2026-11-29 cooked peanut_stew from 840 g white_rice",
                "2026-11-30 threw away 74 g white_rice");

        assertThat(grams(stock, "white_rice")).isEqualByComparingTo("900");
        assertThat(stock.shortfalls()).isEmpty();
    }

    /** A banana is 64 % edible (SR28 09040: 36 % refuse): 118 g of it are 184.4 g as purchased. */
    @Test
    void what_is_eaten_counts_with_its_peel() {
        var stock = of(NOTHING, "2026-11-29 bought 736 g banana", "2026-11-29 ate anna 118 g banana");

        assertThat(grams(stock, "banana").doubleValue()).isBetween(551.6, 551.7);
    }

    @Test
    void a_stock_take_counts_for_more_than_all_before() {
        var before = Map.of(food("white_rice"), List.of(Lot.of(BigDecimal.valueOf(5000))));

        assertThat(grams(of(before, "2026-11-28 bought 907 g white_rice"), "white_rice"))
                .isEqualByComparingTo("5907");
        assertThat(grams(
                        of(
                                before,
                                "2026-11-28 bought 907 g white_rice",
                                "2026-11-29 counted 300 g white_rice",
                                "2026-11-30 ate anna 100 g white_rice"),
                        "white_rice"))
                .isEqualByComparingTo("200");
    }

    @Test
    void what_spoils_first_is_used_first() {
        var stock = of(
                NOTHING,
                "2026-11-28 bought 400 g kale until 2026-12-05",
                "2026-11-28 bought 400 g kale until 2026-12-01",
                "2026-11-29 threw away 500 g kale");

        assertThat(stock.lots().get(food("kale")))
                .containsExactly(new Lot(BigDecimal.valueOf(300), Optional.of(LocalDate.of(2026, 12, 5))));
    }

    @Test
    void raw_meat_without_a_date_keeps_two_days_and_rice_for_ever() {
        var stock = of(NOTHING, "2026-11-28 bought 500 g chicken_thigh", "2026-11-28 bought 500 g white_rice");

        assertThat(stock.lots().get(food("chicken_thigh")))
                .extracting(Lot::useBy)
                .containsExactly(Optional.of(LocalDate.of(2026, 11, 30)));
        assertThat(stock.lots().get(food("white_rice"))).extracting(Lot::useBy).containsExactly(Optional.empty());
    }

    @Test
    void more_used_than_there_was_is_noticed_and_leaves_nothing() {
        var stock = of(NOTHING, "2026-11-28 bought 500 g white_rice", "2026-11-29 cooked x from 840 g white_rice");

        assertThat(grams(stock, "white_rice")).isZero();
        assertThat(stock.shortfalls()).hasSize(1);
        assertThat(stock.shortfalls().get(0).entry().line()).isEqualTo(2);
        assertThat(stock.shortfalls().get(0).says()).isEqualTo("340 g of white_rice more than there was");
    }

    /** Thigh bought on the 28th keeps to the 30th, whatever is counted; without a line before, it counts as bought that day. */
    @Test
    void a_stock_take_makes_nothing_younger() {
        var bought = of(NOTHING, "2026-11-28 bought 500 g chicken_thigh", "2026-11-30 counted 600 g chicken_thigh");
        var counted = of(NOTHING, "2026-11-20 counted 900 g chicken_thigh");

        assertThat(bought.lots().get(food("chicken_thigh")))
                .extracting(Lot::useBy)
                .containsOnly(Optional.of(LocalDate.of(2026, 11, 30)));
        assertThat(grams(bought, "chicken_thigh")).isEqualByComparingTo("600");
        assertThat(counted.lots().get(food("chicken_thigh")))
                .extracting(Lot::useBy)
                .containsExactly(Optional.of(LocalDate.of(2026, 11, 22)));
    }
}
