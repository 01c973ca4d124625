package batchwright.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is printed adds up, and no single figure is off by 1. */
class ApportionedTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void it_adds_up_to_the_rounded_sum(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int round = 0; round < 200; round++) {
            List<BigDecimal> amounts = new ArrayList<>();
            int howMany = random.nextInt(0, 9);
            for (int i = 0; i < howMany; i++) {
                amounts.add(BigDecimal.valueOf(random.nextInt(0, 20_000), 2));
            }
            List<Integer> whole = Apportioned.of(amounts);

            assertThat(whole).hasSameSizeAs(amounts);
            assertThat(whole.stream().mapToInt(Integer::intValue).sum())
                    .isEqualTo(amounts.stream()
                            .reduce(BigDecimal.ZERO, BigDecimal::add)
                            .setScale(0, RoundingMode.HALF_UP)
                            .intValueExact());
            for (int i = 0; i < howMany; i++) {
                assertThat(BigDecimal.valueOf(whole.get(i))
                                .subtract(amounts.get(i))
                                .abs())
                        .isLessThan(BigDecimal.ONE);
            }
        }
    }
}
