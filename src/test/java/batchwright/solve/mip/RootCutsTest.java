package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cuts against enumeration: in seeded random models every choice of whole columns has the same least cost, or none, with and
 * without the cuts, whatever the other columns may be.
 */
class RootCutsTest {
    private static final int MODELS_A_SEED = 60;
    private static final int WHOLE_COLUMNS = 3;
    private static final int MOST = 4;

    private static MipModel random(RandomGenerator random) {
        var model = new MipModel();
        List<Column> columns = new ArrayList<>();
        for (int j = 0; j < WHOLE_COLUMNS + 2; j++) {
            columns.add(model.column("x" + j, 0, j < WHOLE_COLUMNS ? MOST : 7.5, j < WHOLE_COLUMNS, 0));
        }
        for (int i = 0; i < 4; i++) {
            var row = new Expression();
            columns.forEach(c -> row.plus(c, random.nextInt(-70, 130) / 10.0));
            double least = random.nextInt(-50, 250) / 10.0;
            model.row(
                    "r" + i,
                    row,
                    least,
                    random.nextBoolean() ? least + random.nextInt(0, 300) / 10.0 : Double.POSITIVE_INFINITY);
        }
        var cost = new Expression();
        columns.forEach(c -> cost.plus(c, random.nextInt(1, 30)));
        model.minimise(cost, 0);
        return model;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void no_whole_point_is_cut_off(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        int strengthened = 0;
        for (int k = 0; k < MODELS_A_SEED; k++) {
            MipModel given = random(random);
            MipModel cut = RootCuts.strengthen(given, () -> false).model();
            if (cut.rowCount() > given.rowCount()) {
                strengthened++;
            }
            for (int point = 0; point < Math.pow(MOST + 1, WHOLE_COLUMNS); point++) {
                assertThat(leastCost(cut, point)).isCloseTo(leastCost(given, point), within(1e-4));
            }
        }
        assertThat(strengthened).isGreaterThan(MODELS_A_SEED / 10);
    }

    /** With the whole columns fixed at the digits of a number; a large number where nothing keeps the rows. */
    private static double leastCost(MipModel model, int point) {
        double[] lower = model.columns().stream().mapToDouble(Column::lower).toArray();
        double[] upper = model.columns().stream().mapToDouble(Column::upper).toArray();
        int rest = point;
        for (int j = 0; j < WHOLE_COLUMNS; j++) {
            lower[j] = rest % (MOST + 1);
            upper[j] = lower[j];
            rest /= MOST + 1;
        }
        var relaxation = new DualSimplex(model, Stop.NEVER);
        return relaxation.solve(lower, upper) == Relaxation.Status.OPTIMAL ? relaxation.cost() : 1e6;
    }

    /**
     * Worked by hand: 3x + 2y >= 6.5 with x, y whole and both cost 1. The relaxation costs 6.5 / 3; three whole pieces are needed
     * at least: two give 6 at most.
     */
    @Test
    void the_bound_of_a_small_model_rises_to_the_whole_optimum() {
        var model = new MipModel();
        Column x = model.column("x", 0, 5, true, 0);
        Column y = model.column("y", 0, 5, true, 0);
        model.atLeast("enough", new Expression().plus(x, 3).plus(y, 2), 6.5);
        model.minimise(new Expression().plus(x, 1).plus(y, 1), 0);
        var strengthened = RootCuts.strengthen(model, () -> false);
        double[] lower = {0, 0};
        double[] upper = {5, 5};
        var relaxation = new DualSimplex(strengthened.model(), Stop.NEVER);
        relaxation.solve(lower, upper);
        assertThat(relaxation.cost()).as(Arrays.toString(relaxation.values())).isCloseTo(3, within(1e-5));
    }
}
