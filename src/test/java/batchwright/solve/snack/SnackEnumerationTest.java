package batchwright.solve.snack;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.solve.snack.Enumeration.Combination;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The search against {@link Enumeration}, which tries every combination: 200 seeded cases under all four readings. */
class SnackEnumerationTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void finds_what_trying_every_combination_finds(long seed) {
        for (Smallest smallest : Smallest.values()) {
            RandomSnacks random = new RandomSnacks(seed);
            List<SnackItem> items = random.items();
            Enumeration enumeration = new Enumeration(items);
            SnackAsk ask = random.ask(enumeration.mostKcal(), smallest);

            SnackResult result = SnackSearch.search(items, ask);

            List<Combination> meeting = enumeration.meeting(ask);
            if (meeting.isEmpty()) {
                same(Snacks.notReachable(result).orElseThrow(), enumeration, ask);
            } else {
                same(Snacks.found(result).orElseThrow().answers(), enumeration, ask, meeting.get(0));
            }
        }
    }

    /** The best figures are those of all combinations; the top five are the top five of those without a spare piece. */
    private static void same(List<SnackAnswer> answers, Enumeration enumeration, SnackAsk ask, Combination bestOfAll) {
        List<Combination> found = answers.stream().map(enumeration::of).toList();
        assertThat(found.get(0))
                .usingComparator(Enumeration.figures(ask.smallest()))
                .isEqualTo(bestOfAll);
        List<Combination> expected =
                enumeration.withoutSpare(ask).stream().limit(ask.answers()).toList();
        assertThat(found.stream().map(Combination::counts).toList())
                .usingRecursiveComparison()
                .isEqualTo(expected.stream().map(Combination::counts).toList());
        for (int i = 0; i < answers.size(); i++) {
            sameTotals(answers.get(i), expected.get(i), ask);
        }
    }

    private static void sameTotals(SnackAnswer answer, Combination expected, SnackAsk ask) {
        assertThat(answer.energyKcal()).isEqualByComparingTo(expected.kcal());
        assertThat(answer.proteinG()).isEqualByComparingTo(expected.protein());
        assertThat(answer.grams()).isEqualByComparingTo(expected.grams());
        assertThat(answer.cost()).isEqualByComparingTo(expected.cost());
        assertThat(answer.pieces()).isEqualTo(expected.pieces());
        assertThat(answer.overKcal())
                .isEqualByComparingTo(expected.kcal().subtract(ask.energyKcal().max(BigDecimal.ZERO)));
    }

    private static void same(SnackResult.NotReachable result, Enumeration enumeration, SnackAsk ask) {
        List<Combination> affordable = enumeration.affordable(ask);
        List<Combination> enough = affordable.stream()
                .filter(one -> one.kcal().compareTo(ask.energyKcal()) >= 0)
                .toList();
        List<Combination> within = enough.stream()
                .filter(one -> Enumeration.isWithin(one.kcal(), ask.mostKcal()))
                .toList();
        Optional<BigDecimal> over = enough.stream()
                .filter(one -> one.protein().compareTo(ask.proteinG()) >= 0)
                .map(Combination::kcal)
                .min(Comparator.naturalOrder());
        assertThat(result.over().map(SnackAnswer::energyKcal).map(BigDecimal::stripTrailingZeros))
                .isEqualTo(over.map(BigDecimal::stripTrailingZeros));
        if (!within.isEmpty()) {
            BigDecimal mostProtein = within.stream().map(Combination::protein).reduce(BigDecimal.ZERO, BigDecimal::max);
            assertThat(result.missing()).isEqualTo(SnackResult.Missing.PROTEIN);
            assertThat(result.closest().proteinG()).isEqualByComparingTo(mostProtein);
            assertThat(result.proteinShortG())
                    .isEqualByComparingTo(ask.proteinG().subtract(mostProtein));
            assertThat(result.kcalShort()).isZero();
            return;
        }
        BigDecimal mostKcal = affordable.stream()
                .map(Combination::kcal)
                .filter(kcal -> kcal.compareTo(ask.energyKcal()) < 0)
                .reduce(BigDecimal.ZERO, BigDecimal::max);
        assertThat(result.missing())
                .isEqualTo(enough.isEmpty() ? SnackResult.Missing.ENERGY : SnackResult.Missing.WINDOW);
        assertThat(result.closest().energyKcal()).isEqualByComparingTo(mostKcal);
        assertThat(result.kcalShort()).isEqualByComparingTo(ask.energyKcal().subtract(mostKcal));
        assertThat(result.proteinShortG())
                .isEqualByComparingTo(
                        ask.proteinG().subtract(result.closest().proteinG()).max(BigDecimal.ZERO));
    }

    @Test
    void the_seeds_reach_every_outcome() {
        Map<SnackResult.Missing, Integer> missing = new EnumMap<>(SnackResult.Missing.class);
        int[] full = {0};
        seeds().forEach(seed -> {
            RandomSnacks random = new RandomSnacks(seed);
            List<SnackItem> items = random.items();
            SnackResult result =
                    SnackSearch.search(items, random.ask(new Enumeration(items).mostKcal(), Smallest.ENERGY));
            Snacks.found(result).ifPresent(found -> full[0] += found.answers().size() == 5 ? 1 : 0);
            Snacks.notReachable(result).ifPresent(failed -> missing.merge(failed.missing(), 1, Integer::sum));
        });
        assertThat(missing).containsOnlyKeys(SnackResult.Missing.values());
        assertThat(missing.values()).allMatch(count -> count >= 5);
        assertThat(full[0]).isGreaterThan(30);
    }

    /** 40 items are too many for every combination, but not for every pair: at most 2 kinds, 3 pieces of each. */
    @ParameterizedTest
    @EnumSource
    void finds_the_best_of_all_pairs_of_40_items(Smallest smallest) {
        for (int seed = 1; seed <= 6; seed++) {
            RandomSnacks random = new RandomSnacks(seed);
            List<SnackItem> items = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                items.add(random.item("item" + (char) ('a' + i)));
            }
            SnackAsk ask = Snacks.withKinds(Snacks.withProtein(Snacks.ask("650", smallest), "20"), 2);

            SnackAnswer best = Snacks.found(SnackSearch.search(items, ask))
                    .orElseThrow()
                    .answers()
                    .get(0);

            assertThat(Enumeration.figuresOf(best))
                    .usingComparator(Enumeration.figures(smallest))
                    .isEqualTo(bestPair(items, ask));
        }
    }

    private static Combination bestPair(List<SnackItem> items, SnackAsk ask) {
        List<Combination> best = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            for (int j = i + 1; j < items.size(); j++) {
                Enumeration pair = new Enumeration(List.of(items.get(i), items.get(j)));
                pair.meeting(ask).stream().findFirst().ifPresent(best::add);
            }
        }
        return best.stream().min(Enumeration.figures(ask.smallest())).orElseThrow();
    }
}
