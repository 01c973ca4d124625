package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/**
 * Seeded random models against others: the simplex of Apache Commons Math 3.6.1 on linear programs, the mixed-integer solver of
 * ojAlgo 57.1.0 and plain enumeration on whole-numbered ones. Status and least cost must agree.
 */
class OtherSolversTest {
    private static final int MODELS_A_SEED = 40;

    private record Limit(double[] coefficients, double lower, double upper) {
        boolean keeps(double[] x) {
            double sum = dot(coefficients, x);
            return sum >= lower && sum <= upper;
        }
    }

    private static double dot(double[] a, double[] x) {
        double sum = 0;
        for (int j = 0; j < a.length; j++) {
            sum += a[j] * x[j];
        }
        return sum;
    }

    private record Problem(double[] costs, double[] uppers, List<Limit> limits, boolean whole) {
        static Problem random(RandomGenerator random, boolean whole) {
            int n = random.nextInt(2, 6);
            int m = random.nextInt(1, 6);
            double[] costs = random.ints(n, -9, 20).asDoubleStream().toArray();
            double[] uppers = random.ints(n, 1, 9).asDoubleStream().toArray();
            List<Limit> limits = new ArrayList<>();
            for (int i = 0; i < m; i++) {
                double[] a = random.ints(n, -6, 12).asDoubleStream().toArray();
                double lower = random.nextInt(-10, 40);
                limits.add(new Limit(a, lower, lower + random.nextInt(0, 30)));
            }
            return new Problem(costs, uppers, limits, whole);
        }

        SearchResult<double[]> ours() {
            var model = new MipModel();
            List<Column> columns = new ArrayList<>();
            var cost = new Expression();
            for (int j = 0; j < costs.length; j++) {
                columns.add(model.column("x" + j, 0, uppers[j], whole, 0));
                cost.plus(columns.get(j), costs[j]);
            }
            for (Limit limit : limits) {
                var sum = new Expression();
                for (int j = 0; j < costs.length; j++) {
                    sum.plus(columns.get(j), limit.coefficients[j]);
                }
                model.row("row", sum, limit.lower, limit.upper);
            }
            model.minimise(cost, 0);
            return BranchAndBound.plain(model, Double.POSITIVE_INFINITY, () -> false)
                    .search();
        }

        /** Least cost over every whole-numbered point; NaN when nothing keeps the limits. */
        double enumerated() {
            double[] x = new double[costs.length];
            double best = Double.NaN;
            while (true) {
                if (limits.stream().allMatch(limit -> limit.keeps(x))) {
                    double cost = dot(costs, x);
                    best = Double.isNaN(best) ? cost : Math.min(best, cost);
                }
                int j = 0;
                while (j < x.length && x[j] == uppers[j]) {
                    x[j++] = 0;
                }
                if (j == x.length) {
                    return best;
                }
                x[j]++;
            }
        }

        /** Least cost by Commons Math; NaN when nothing keeps the limits. */
        double commonsMath() {
            List<LinearConstraint> constraints = new ArrayList<>();
            for (int j = 0; j < costs.length; j++) {
                double[] unit = new double[costs.length];
                unit[j] = 1;
                constraints.add(new LinearConstraint(unit, Relationship.GEQ, 0));
                constraints.add(new LinearConstraint(unit, Relationship.LEQ, uppers[j]));
            }
            for (Limit limit : limits) {
                constraints.add(new LinearConstraint(limit.coefficients, Relationship.GEQ, limit.lower));
                constraints.add(new LinearConstraint(limit.coefficients, Relationship.LEQ, limit.upper));
            }
            try {
                return new SimplexSolver()
                        .optimize(
                                new MaxIter(10_000),
                                new LinearObjectiveFunction(costs, 0),
                                new LinearConstraintSet(constraints),
                                GoalType.MINIMIZE)
                        .getValue();
            } catch (NoFeasibleSolutionException none) {
                return Double.NaN;
            }
        }

        /** Least cost by ojAlgo; NaN when nothing keeps the limits. */
        double ojAlgo() {
            var model = new ExpressionsBasedModel();
            for (int j = 0; j < costs.length; j++) {
                model.newVariable("x" + j)
                        .lower(0)
                        .upper(uppers[j])
                        .weight(costs[j])
                        .integer(whole);
            }
            for (int i = 0; i < limits.size(); i++) {
                var expression = model.newExpression("row" + i)
                        .lower(limits.get(i).lower)
                        .upper(limits.get(i).upper);
                for (int j = 0; j < costs.length; j++) {
                    expression.set(j, limits.get(i).coefficients[j]);
                }
            }
            Optimisation.Result result = model.minimise();
            return result.getState().isFeasible() ? result.getValue() : Double.NaN;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void whole_numbered_programs_agree_with_enumeration(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int k = 0; k < MODELS_A_SEED; k++) {
            Problem problem = Problem.random(random, true);
            agrees(problem, problem.enumerated(), seed, k);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void linear_programs_agree_with_commons_math(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int k = 0; k < MODELS_A_SEED; k++) {
            Problem problem = Problem.random(random, false);
            agrees(problem, problem.commonsMath(), seed, k);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void whole_numbered_programs_agree_with_ojalgo(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int k = 0; k < MODELS_A_SEED; k++) {
            Problem problem = Problem.random(random, true);
            double theirs = problem.ojAlgo();
            // Where ojAlgo finds nothing, enumeration decides: some of these models have a solution all the same.
            agrees(problem, Double.isNaN(theirs) ? problem.enumerated() : theirs, seed, k);
        }
    }

    private static void agrees(Problem problem, double theirs, long seed, int k) {
        SearchResult<double[]> ours = problem.ours();
        assertThat(ours.state()).isEqualTo(SearchResult.State.DONE);
        assertThat(ours.best().isPresent())
                .as("seed %d, model %d: feasible", seed, k)
                .isEqualTo(!Double.isNaN(theirs));
        if (ours.best().isPresent()) {
            assertThat(ours.cost()).as("seed %d, model %d", seed, k).isCloseTo(theirs, within(1e-6));
        }
    }
}
