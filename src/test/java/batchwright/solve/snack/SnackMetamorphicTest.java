package batchwright.solve.snack;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Changes of the question whose effect on the answer is known without knowing the answer. */
class SnackMetamorphicTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1001, 1060);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_order_of_the_items_changes_nothing(long seed) {
        Case one = new Case(seed);
        List<SnackItem> shuffled = new ArrayList<>(one.items);
        Collections.shuffle(shuffled, new Random(seed));
        for (Smallest smallest : Smallest.values()) {
            SnackAsk ask = one.ask(smallest);
            assertThat(SnackSearch.search(shuffled, ask)).isEqualTo(SnackSearch.search(one.items, ask));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void one_more_item_never_makes_the_best_answer_worse(long seed) {
        Case one = new Case(seed);
        List<SnackItem> more = new ArrayList<>(one.items);
        more.add(one.random.item("extra"));
        for (Smallest smallest : Smallest.values()) {
            SnackAsk ask = one.ask(smallest);
            Optional<SnackAnswer> before = best(one.items, ask);
            Optional<SnackAnswer> after = best(more, ask);
            if (before.isPresent()) {
                assertThat(Enumeration.figures(smallest)
                                .compare(
                                        Enumeration.figuresOf(after.orElseThrow()),
                                        Enumeration.figuresOf(before.get())))
                        .isNotPositive();
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void asking_for_more_energy_never_lowers_the_total(long seed) {
        Case one = new Case(seed);
        BigDecimal total = BigDecimal.ZERO;
        for (int kcal = 0; kcal <= 1500; kcal += 50) {
            Optional<SnackAnswer> best = best(one.items, Snacks.ask(Integer.toString(kcal), Smallest.ENERGY));
            if (best.isPresent()) {
                assertThat(best.get().energyKcal()).isGreaterThanOrEqualTo(total);
                total = best.get().energyKcal();
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void without_a_protein_ask_the_overshoot_is_less_than_every_piece_used(long seed) {
        Case one = new Case(seed);
        for (Smallest smallest : Smallest.values()) {
            SnackAsk ask = Snacks.withProtein(one.ask(smallest), "0");
            for (SnackAnswer answer : answers(one.items, ask)) {
                one.items.stream()
                        .filter(item -> answer.counts().containsKey(item.code()))
                        .map(SnackItem::energyKcal)
                        .min(Comparator.naturalOrder())
                        .ifPresent(least -> assertThat(answer.overKcal()).isLessThan(least));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void other_units_of_money_and_energy_change_no_count(long seed) {
        Case one = new Case(seed);
        BigDecimal money = new BigDecimal("0.1");
        BigDecimal energy = new BigDecimal("4.2"); // about kJ in a kcal; any factor will do
        List<SnackItem> scaled = one.items.stream()
                .map(item -> new SnackItem(
                        item.code(),
                        item.energyKcal().multiply(energy),
                        item.proteinG(),
                        item.grams(),
                        item.cost().multiply(money),
                        item.most(),
                        item.atHome()))
                .toList();
        for (Smallest smallest : Smallest.values()) {
            SnackAsk ask = one.ask(smallest);
            SnackAsk scaledAsk = new SnackAsk(
                    ask.energyKcal().multiply(energy),
                    ask.proteinG(),
                    ask.budget().map(money::multiply),
                    ask.mostKcal().map(energy::multiply),
                    ask.mostKinds(),
                    smallest,
                    5);
            assertThat(answers(scaled, scaledAsk).stream().map(SnackAnswer::counts))
                    .isEqualTo(answers(one.items, ask).stream()
                            .map(SnackAnswer::counts)
                            .toList());
        }
    }

    private static List<SnackAnswer> answers(List<SnackItem> items, SnackAsk ask) {
        return Snacks.found(SnackSearch.search(items, ask))
                .map(SnackResult.Found::answers)
                .orElse(List.of());
    }

    private static Optional<SnackAnswer> best(List<SnackItem> items, SnackAsk ask) {
        return answers(items, ask).stream().findFirst();
    }

    /** Items and an ask from one seed. */
    private static final class Case {
        final RandomSnacks random;
        final List<SnackItem> items;
        private final SnackAsk ask;

        Case(long seed) {
            random = new RandomSnacks(seed);
            items = random.items();
            ask = random.ask(new Enumeration(items).mostKcal(), Smallest.ENERGY);
        }

        SnackAsk ask(Smallest smallest) {
            return new SnackAsk(
                    ask.energyKcal(),
                    ask.proteinG(),
                    ask.budget(),
                    ask.mostKcal(),
                    ask.mostKinds(),
                    smallest,
                    ask.answers());
        }
    }
}
