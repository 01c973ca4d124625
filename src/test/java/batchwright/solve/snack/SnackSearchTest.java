package batchwright.solve.snack;

import static batchwright.solve.snack.Snacks.ask;
import static batchwright.solve.snack.Snacks.atHome;
import static batchwright.solve.snack.Snacks.item;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Ties, limits, refusals and speed; every answer here is found on paper, unless it says otherwise. */
class SnackSearchTest {
    private static final SnackItem APPLE = item("apple", "100", "1", "150", "0.50", 2);
    private static final SnackItem BREAD = item("bread", "100", "1", "150", "0.50", 2);
    private static final SnackItem YOGURT = item("yogurt", "100", "9", "150", "0.50", 2);

    @Test
    void equal_snacks_come_in_alphabetical_order_of_their_pieces() {
        assertThat(counts(List.of(YOGURT, BREAD, APPLE), ask("200", Smallest.ENERGY)))
                .containsExactly(
                        Map.of("apple", 2),
                        Map.of("apple", 1, "bread", 1),
                        Map.of("apple", 1, "yogurt", 1),
                        Map.of("bread", 2),
                        Map.of("bread", 1, "yogurt", 1));
    }

    @Test
    void equal_snacks_with_more_from_the_pantry_come_first() {
        assertThat(counts(List.of(APPLE, BREAD, atHome(YOGURT)), ask("200", Smallest.COST)))
                .startsWith(Map.of("yogurt", 2), Map.of("apple", 1, "yogurt", 1), Map.of("bread", 1, "yogurt", 1));
    }

    @Test
    void no_answer_is_another_answer_and_a_piece_more() {
        // 100 kcal closes the calorie gap: any two pieces would be one too many
        assertThat(counts(List.of(APPLE, BREAD), ask("90", Smallest.ENERGY)))
                .containsExactly(Map.of("apple", 1), Map.of("bread", 1));
    }

    @Test
    void a_weightless_free_piece_without_energy_is_never_added_though_it_is_at_home() {
        SnackItem sweetener = atHome(item("sweetener", "0", "1", "0", "0", 5));
        SnackAsk ask = Snacks.withProtein(ask("90", Smallest.GRAMS), "1");
        assertThat(counts(List.of(sweetener, APPLE), ask)).containsExactly(Map.of("apple", 1));
    }

    @Test
    void at_most_so_many_kinds() {
        List<SnackItem> items = List.of(item("a", "60", "0", "1", "1", 3), item("b", "50", "0", "1", "1", 3));
        assertThat(counts(items, ask("110", Smallest.ENERGY))).first().isEqualTo(Map.of("a", 1, "b", 1));
        assertThat(counts(items, Snacks.withKinds(ask("110", Smallest.ENERGY), 1)))
                .containsExactly(Map.of("a", 2), Map.of("b", 3)); // 120 and 150 kcal
    }

    @Test
    void gives_no_more_answers_than_wanted() {
        SnackAsk two = new SnackAsk(
                BigDecimal.valueOf(200),
                BigDecimal.ZERO,
                Optional.empty(),
                Optional.empty(),
                SnackAsk.NO_LIMIT,
                Smallest.ENERGY,
                2);
        assertThat(counts(List.of(APPLE, BREAD, YOGURT), two))
                .containsExactly(Map.of("apple", 2), Map.of("apple", 1, "bread", 1));
    }

    @Test
    void nothing_at_all_can_be_short_of_everything() {
        SnackResult.NotReachable result = notReachable(List.of(), ask("200", Smallest.ENERGY));
        assertThat(result.missing()).isEqualTo(SnackResult.Missing.ENERGY);
        assertThat(result.closest().counts()).isEmpty();
        assertThat(result.kcalShort()).isEqualByComparingTo("200");
    }

    @Test
    void no_kinds_allowed_is_short_of_everything() {
        assertThat(notReachable(List.of(APPLE), Snacks.withKinds(ask("50", Smallest.ENERGY), 0))
                        .kcalShort())
                .isEqualByComparingTo("50");
    }

    @Test
    void enough_energy_but_too_little_protein_says_so() {
        // 2 apples and 2 yogurts are all there is: 400 kcal, 20 g
        SnackResult.NotReachable result =
                notReachable(List.of(APPLE, YOGURT), Snacks.withProtein(ask("150", Smallest.ENERGY), "30"));
        assertThat(result.missing()).isEqualTo(SnackResult.Missing.PROTEIN);
        assertThat(result.kcalShort()).isZero();
        assertThat(result.closest().proteinG()).isEqualByComparingTo("20");
        assertThat(result.proteinShortG()).isEqualByComparingTo("10");
        assertThat(result.over()).isEmpty();
    }

    @Test
    void protein_that_only_the_most_energy_forbids_shows_what_would_do() {
        // within 250 kcal: 2 yogurts, 18 g; with 19 g asked for: 2 yogurts and an apple, 300 kcal
        SnackAsk ask = Snacks.withMostKcal(Snacks.withProtein(ask("150", Smallest.ENERGY), "19"), "250");
        SnackResult.NotReachable result = notReachable(List.of(APPLE, YOGURT), ask);
        assertThat(result.missing()).isEqualTo(SnackResult.Missing.PROTEIN);
        assertThat(result.proteinShortG()).isEqualByComparingTo("1");
        assertThat(result.over().orElseThrow().counts()).isEqualTo(Map.of("apple", 1, "yogurt", 2));
    }

    @Test
    void a_budget_too_small_says_how_far_it_goes() {
        SnackResult.NotReachable result =
                notReachable(List.of(APPLE), Snacks.withBudget(ask("200", Smallest.ENERGY), "0.99"));
        assertThat(result.missing()).isEqualTo(SnackResult.Missing.ENERGY);
        assertThat(result.closest().counts()).isEqualTo(Map.of("apple", 1));
        assertThat(result.kcalShort()).isEqualByComparingTo("100");
    }

    @Test
    void the_closest_is_found_wherever_it_lies() {
        for (int most = 0; most < 40; most++) {
            List<SnackItem> crumbs = List.of(item("crumb", "1", "1", "1", "0", most));
            SnackResult.NotReachable energy = notReachable(crumbs, ask("40", Smallest.ENERGY));
            assertThat(energy.kcalShort()).isEqualByComparingTo(BigDecimal.valueOf(40 - most));
            SnackAsk protein = Snacks.withProtein(ask("0", Smallest.ENERGY), "40");
            assertThat(notReachable(crumbs, protein).proteinShortG())
                    .isEqualByComparingTo(BigDecimal.valueOf(40 - most));
        }
    }

    @Test
    void a_limit_that_is_met_exactly_is_met() {
        SnackAsk ask = Snacks.withMostKcal(Snacks.withBudget(ask("200", Smallest.ENERGY), "1.0"), "200.00");
        assertThat(counts(List.of(APPLE), ask)).containsExactly(Map.of("apple", 2));
    }

    @Test
    void a_huge_stock_is_no_trouble() {
        SnackItem rice = item("rice_cake", "35", "0.7", "9", "0.08", Integer.MAX_VALUE);
        assertThat(counts(List.of(rice), ask("1000", Smallest.ENERGY))).containsExactly(Map.of("rice_cake", 29));
    }

    @Test
    void refuses_two_items_with_one_code() {
        assertThatThrownBy(() -> SnackSearch.search(List.of(APPLE, APPLE), ask("1", Smallest.ENERGY)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("apple");
    }

    @Test
    void refuses_figures_too_large_for_exact_sums() {
        SnackItem fine = item("fine", "0.00000000000000001", "0", "1", "1", 1);
        assertThatThrownBy(() -> SnackSearch.search(List.of(fine, APPLE), ask("1", Smallest.ENERGY)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fewer decimals");
    }

    @Test
    void refuses_values_no_snack_can_have() {
        assertThatThrownBy(() -> item("a", "-1", "0", "0", "0", 1)).hasMessageContaining("energyKcal of a (-1)");
        assertThatThrownBy(() -> item("a", "1", "0", "0", "0", -1)).hasMessageContaining("most of a (-1)");
        assertThatThrownBy(() -> item(" ", "1", "0", "0", "0", 1)).hasMessageContaining("code");
        assertThatThrownBy(() -> Snacks.withMostKcal(ask("200", Smallest.ENERGY), "199"))
                .hasMessageContaining("mostKcal (199)");
        assertThatThrownBy(() -> Snacks.withBudget(ask("200", Smallest.ENERGY), "-1"))
                .hasMessageContaining("budget (-1)");
        assertThatThrownBy(() -> Snacks.withKinds(ask("200", Smallest.ENERGY), -1))
                .hasMessageContaining("mostKinds (-1)");
    }

    /** A day's worth of energy from 4 of 30 items: under 2 s for each reading, found or not (usually under 0.1 s). */
    @Test
    void a_large_ask_ends_soon() {
        List<SnackItem> items = manyItems(30);
        for (Smallest smallest : Smallest.values()) {
            SnackAsk ask = Snacks.withProtein(Snacks.withKinds(ask("2000", smallest), 4), "100");
            Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> SnackSearch.search(items, ask));
            SnackAsk tooMuch = Snacks.withKinds(ask("6000", smallest), 4);
            Assertions.assertTimeoutPreemptively(Duration.ofSeconds(10), () -> notReachable(items, tooMuch));
        }
    }

    private static List<SnackItem> manyItems(int number) {
        Random random = new Random(2);
        List<SnackItem> items = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            items.add(new SnackItem(
                    "item" + i,
                    BigDecimal.valueOf(random.nextInt(300, 4000), 1),
                    BigDecimal.valueOf(random.nextInt(200), 1),
                    BigDecimal.valueOf(random.nextInt(10, 250)),
                    BigDecimal.valueOf(random.nextInt(10, 150), 2),
                    3,
                    random.nextBoolean()));
        }
        return items;
    }

    private static List<Map<String, Integer>> counts(List<SnackItem> items, SnackAsk ask) {
        return Snacks.found(SnackSearch.search(items, ask)).orElseThrow().answers().stream()
                .map(SnackAnswer::counts)
                .toList();
    }

    private static SnackResult.NotReachable notReachable(List<SnackItem> items, SnackAsk ask) {
        return Snacks.notReachable(SnackSearch.search(items, ask)).orElseThrow();
    }
}
