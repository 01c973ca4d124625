package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Cuts in a plane; the point to cut off is the origin, so the depth of x + y >= d is d / sqrt(2). */
class CutPoolTest {
    private static final double[] ORIGIN = {0, 0};
    private static final Cut SHALLOW = new Cut(new double[] {1, 0}, 0.2);
    private static final Cut DEEP = new Cut(new double[] {0, 1}, 0.5);

    private final CutPool pool = new CutPool(Stop.NEVER);

    @Test
    void takes_the_deepest_first() {
        assertThat(pool.takeDeepest(List.of(SHALLOW, DEEP), ORIGIN)).isTrue();

        assertThat(pool.cuts()).containsExactly(DEEP, SHALLOW);
    }

    /** The cosine of the angle between (0, 1) and (0.1, 1) is 0.995. */
    @Test
    void takes_none_that_is_nearly_parallel_to_one_it_has() {
        pool.takeDeepest(List.of(DEEP), ORIGIN);

        assertThat(pool.takeDeepest(List.of(new Cut(new double[] {0.1, 1}, 0.4)), ORIGIN))
                .isFalse();
        assertThat(pool.cuts()).containsExactly(DEEP);
    }

    @Test
    void drops_what_is_idle_and_keeps_the_order_of_the_others() {
        pool.takeDeepest(List.of(SHALLOW, DEEP), ORIGIN);

        pool.dropIdle(k -> k == 0);

        assertThat(pool.cuts()).containsExactly(SHALLOW);
    }

    /** Each cut is at right angles to all others, as deep as its number. */
    @Test
    void takes_so_many_in_a_round_and_no_more() {
        int many = CutPool.MOST_A_ROUND + 5;
        List<Cut> found = IntStream.range(0, many)
                .mapToObj(k -> {
                    var axis = new double[many];
                    axis[k] = 1;
                    return new Cut(axis, k + 1);
                })
                .toList();

        pool.takeDeepest(found, new double[many]);
        assertThat(pool.cuts())
                .hasSize(CutPool.MOST_A_ROUND)
                .contains(found.get(many - 1))
                .doesNotContain(found.get(0));

        pool.takeDeepest(found.subList(0, 5), new double[many]);
        assertThat(pool.cuts()).hasSize(many);
    }

    @Test
    void tells_of_its_work() {
        var work = new long[1];
        var told = new CutPool(new Stop() {
            @Override
            public boolean requested() {
                return false;
            }

            @Override
            public void spend(long more) {
                work[0] += more;
            }
        });

        told.takeDeepest(List.of(SHALLOW, DEEP), ORIGIN);

        assertThat(work[0]).isEqualTo(2);
    }
}
