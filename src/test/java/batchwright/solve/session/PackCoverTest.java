package batchwright.solve.session;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Pack;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PackCoverTest {
    static LongStream seeds() {
        return LongStream.range(0, 100);
    }

    private static List<Pack> sold(int... gramsAndCents) {
        return new LittleSessions()
                .sells("food", false, gramsAndCents)
                .request(1, 1, false)
                .kitchen()
                .packs()
                .values()
                .iterator()
                .next();
    }

    /** Against the textbook recursion over every whole gram. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_the_recursion_over_grams_finds(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        int[] offers = new int[2 * random.nextInt(1, 5)];
        for (int i = 0; i < offers.length; i += 2) {
            offers[i] = random.nextInt(10, 200);
            offers[i + 1] = random.nextInt(1, 200);
        }
        int need = random.nextInt(1, 600);
        long[] least = new long[need + 1];
        Arrays.fill(least, 1, need + 1, Long.MAX_VALUE / 2);
        for (int grams = 1; grams <= need; grams++) {
            for (int i = 0; i < offers.length; i += 2) {
                least[grams] = Math.min(least[grams], least[Math.max(0, grams - offers[i])] + offers[i + 1]);
            }
        }

        List<Pack> bought = PackCover.of(sold(offers), BigDecimal.valueOf(need));

        assertThat(bought.stream().mapToLong(p -> p.price().minor()).sum()).isEqualTo(least[need]);
        assertThat(bought.stream().mapToInt(p -> p.grams().intValueExact()).sum())
                .isGreaterThanOrEqualTo(need);
        assertThat(bought).isSortedAccordingTo((a, b) -> b.grams().compareTo(a.grams()));
    }

    @Test
    void nothing_is_bought_when_nothing_is_missing_or_sold() {
        assertThat(PackCover.of(sold(100, 1), BigDecimal.ZERO)).isEmpty();
        assertThat(PackCover.of(List.of(), BigDecimal.TEN)).isEmpty();
    }
}
