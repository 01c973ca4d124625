package batchwright.files.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Test;

/** Against Commons Math. */
class MedianTest {
    @Test
    void of_all_and_without_one_are_those_of_another_library() {
        RandomGenerator random = new java.util.SplittableRandom(1);
        for (int size = 2; size < 40; size++) {
            double[] values = random.doubles(size, 0, 10).map(Math::rint).toArray();
            var median = new batchwright.files.shop.Median(values);

            assertThat(median.ofAll()).isEqualTo(new Median().evaluate(values));
            for (int out = 0; out < size; out++) {
                assertThat(median.without(values[out])).isEqualTo(new Median().evaluate(without(values, out)));
            }
        }
    }

    private static double[] without(double[] values, int out) {
        return IntStream.range(0, values.length)
                .filter(i -> i != out)
                .mapToDouble(i -> values[i])
                .toArray();
    }
}
