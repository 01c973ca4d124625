package batchwright.plan.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;

/** Against ojAlgo's quadratic solver, and on paper. */
class PotSharesTest {
    @Test
    void what_came_out_as_planned_is_shared_as_planned() {
        var claims = List.of(new Claim(5, 360, 2, 100, 600), new Claim(3, 240, 1, 100, 600));

        assertThat(PotShares.of(5 * 360 + 3 * 240, claims)).containsExactly(360.0, 240.0);
    }

    /** 100 g less: a gram costs the first twice as much, so it gives half: -p/2 each of 2, -p each of 1, p = 50. */
    @Test
    void what_is_missing_is_missing_where_it_costs_least() {
        var claims = List.of(new Claim(2, 300, 2, 0, 600), new Claim(1, 300, 1, 0, 600));

        List<Double> shares = PotShares.of(800, claims);

        assertThat(shares.get(0)).isCloseTo(275, within(1e-9));
        assertThat(shares.get(1)).isCloseTo(250, within(1e-9));
    }

    @Test
    void nobody_gets_more_or_less_than_they_may() {
        var claims = List.of(new Claim(1, 300, 1, 290, 310), new Claim(1, 300, 1, 100, 600));

        assertThat(PotShares.of(500, claims)).containsExactly(290.0, 210.0);
        assertThat(PotShares.of(300, claims)).containsExactly(290.0, 100.0);
        assertThat(PotShares.of(2000, claims)).containsExactly(310.0, 600.0);
    }

    @Test
    void as_the_quadratic_solver_of_ojalgo() {
        var random = new Random(20261130);
        for (int run = 0; run < 300; run++) {
            List<Claim> claims = new ArrayList<>();
            double least = 0;
            double most = 0;
            for (int i = 0; i <= random.nextInt(5); i++) {
                double low = 50 + random.nextInt(200);
                var claim = new Claim(
                        1 + random.nextInt(8),
                        100 + random.nextInt(500),
                        0.2 + random.nextDouble() * 5,
                        low,
                        low + random.nextInt(400));
                claims.add(claim);
                least += claim.containers() * claim.least();
                most += claim.containers() * claim.most();
            }
            double pot = least + random.nextDouble() * (most - least);

            List<Double> ours = PotShares.of(pot, claims);
            double used = 0;
            for (int i = 0; i < claims.size(); i++) {
                used += claims.get(i).containers() * ours.get(i);
                assertThat(ours.get(i))
                        .isBetween(claims.get(i).least() - 1e-9, claims.get(i).most() + 1e-9);
            }
            assertThat(used).isCloseTo(pot, within(1e-6));
            assertThat(cost(claims, ours)).isLessThanOrEqualTo(cost(claims, theirs(pot, claims)) * (1 + 1e-6) + 1e-3);
            assertThat(cost(claims, theirs(pot, claims)))
                    .isCloseTo(cost(claims, ours), within(1 + cost(claims, ours) * 1e-4));
        }
    }

    private static double cost(List<Claim> claims, List<Double> shares) {
        double cost = 0;
        for (int i = 0; i < claims.size(); i++) {
            Claim claim = claims.get(i);
            cost += claim.containers() * claim.weight() * Math.pow(shares.get(i) - claim.best(), 2);
        }
        return cost;
    }

    /** min 1/2 x'Qx - c'x, one equation, two inequalities for each share. */
    private static List<Double> theirs(double pot, List<Claim> claims) {
        int n = claims.size();
        var q = R064Store.FACTORY.make(n, n);
        var c = R064Store.FACTORY.make(n, 1);
        var equation = R064Store.FACTORY.make(1, n);
        var body = R064Store.FACTORY.make(2 * n, n);
        var right = R064Store.FACTORY.make(2 * n, 1);
        for (int i = 0; i < n; i++) {
            Claim claim = claims.get(i);
            double twice = 2 * claim.containers() * claim.weight();
            q.set(i, i, twice);
            c.set(i, 0, twice * claim.best());
            equation.set(0, i, claim.containers());
            body.set(2 * i, i, 1);
            right.set(2 * i, 0, claim.most());
            body.set(2 * i + 1, i, -1);
            right.set(2 * i + 1, 0, -claim.least());
        }
        var value = R064Store.FACTORY.make(1, 1);
        value.set(0, 0, pot);
        Optimisation.Result result = ConvexSolver.newBuilder()
                .objective(q, c)
                .equalities(equation, value)
                .inequalities(body, right)
                .build()
                .solve();
        assertThat(result.getState().isFeasible()).isTrue();
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            shares.add(result.doubleValue(i));
        }
        return shares;
    }
}
