package batchwright.solve.session;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two sessions of two containers each, random dishes and packs: every choice of dishes and every purchase on both days is enumerated.
 * The planner's plan costs no less and its bound is no more; what it says is proven, is.
 */
class SessionsBruteForceTest {
    private static final int FOODS = 2;
    private static final int MOST_PACKS = 5;

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    /** Grams of each food in one container of a dish, packs of each food, what is at home without a date. */
    private record Problem(int[][] grams, int[][] packGrams, int[][] cents, boolean[] perishable, int[] atHome) {
        static Problem of(long seed) {
            RandomGenerator random =
                    RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
            int[][] grams = new int[2][FOODS];
            int[][] packGrams = new int[FOODS][2];
            int[][] cents = new int[FOODS][2];
            var perishable = new boolean[FOODS];
            int[] atHome = new int[FOODS];
            for (int f = 0; f < FOODS; f++) {
                perishable[f] = random.nextInt(3) == 0;
                atHome[f] = random.nextBoolean() ? 0 : 10 * random.nextInt(20);
                for (int i = 0; i < 2; i++) {
                    grams[i][f] = 5 * random.nextInt(4, 30);
                    packGrams[f][i] = 50 * (1 + 3 * i) + 10 * random.nextInt(1, 8);
                    cents[f][i] = packGrams[f][i] * random.nextInt(50, 100) / 100;
                }
            }
            return new Problem(grams, packGrams, cents, perishable, atHome);
        }

        PlanRequest request() {
            var kitchen = new LittleSessions();
            for (int f = 0; f < FOODS; f++) {
                kitchen.sells("food" + f, perishable[f], packGrams[f][0], cents[f][0], packGrams[f][1], cents[f][1]);
                if (atHome[f] > 0) {
                    kitchen.atHome("food" + f, atHome[f], 0);
                }
            }
            kitchen.dish("dish0", "food0", grams[0][0], "food1", grams[0][1]);
            kitchen.dish("dish1", "food0", grams[1][0], "food1", grams[1][1]);
            return kitchen.request(4, 2, false);
        }

        /** Cents of the cheapest purchases, over both dishes on both days. */
        int cheapest() {
            int cheapest = Integer.MAX_VALUE;
            for (int[] first : grams) {
                for (int[] second : grams) {
                    int cost = 0;
                    for (int f = 0; f < FOODS; f++) {
                        cost += cheapest(f, 2 * first[f], 2 * second[f]);
                    }
                    cheapest = Math.min(cheapest, cost);
                }
            }
            return cheapest;
        }

        /** What is at home is used before packs; it keeps for ever. What is left of packs may not. */
        private int cheapest(int f, int first, int second) {
            int homeFirst = Math.min(first, atHome[f]);
            int homeSecond = Math.min(second, atHome[f] - homeFirst);
            int cheapest = Integer.MAX_VALUE;
            for (int[] packs = new int[4]; packs[3] <= MOST_PACKS; next(packs)) {
                int left = homeFirst + packs[0] * packGrams[f][0] + packs[1] * packGrams[f][1] - first;
                int stock = homeSecond + (perishable[f] ? 0 : left);
                boolean enough = left >= 0 && stock + packs[2] * packGrams[f][0] + packs[3] * packGrams[f][1] >= second;
                if (enough) {
                    int cost = (packs[0] + packs[2]) * cents[f][0] + (packs[1] + packs[3]) * cents[f][1];
                    cheapest = Math.min(cheapest, cost);
                }
            }
            return cheapest;
        }

        /** Counts up: each of the first three goes from none to the most. */
        private static void next(int[] packs) {
            int at = 0;
            packs[at]++;
            while (at < 3 && packs[at] > MOST_PACKS) {
                packs[at] = 0;
                at++;
                packs[at]++;
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void never_claims_more_than_enumeration_finds(long seed) {
        Problem problem = Problem.of(seed);
        PlanRequest request = problem.request();

        PlanResult result = LittleSessions.plan(request);

        long cost = result.proof().cost().minor();
        assertThat(Audit.of(request, result.best().orElseThrow()).checks()).allMatch(AuditReport.Check::passed);
        assertThat(cost).isGreaterThanOrEqualTo(problem.cheapest());
        assertThat(result.proof().lowerBound().minor()).isLessThanOrEqualTo(problem.cheapest());
        if (result instanceof PlanResult.Planned) {
            assertThat(cost).isEqualTo(problem.cheapest());
        }
    }

    /** How good the plans are is no promise, but the tests above must not be empty ones. */
    @Test
    void most_plans_are_the_cheapest_and_some_are_proven() {
        long cheapest = 0;
        long proven = 0;
        for (long seed : seeds().toArray()) {
            Problem problem = Problem.of(seed);
            PlanResult result = LittleSessions.plan(problem.request());
            cheapest += result.proof().cost().minor() == problem.cheapest() ? 1 : 0;
            proven += result instanceof PlanResult.Planned ? 1 : 0;
        }
        assertThat(cheapest).isGreaterThan(50);
        assertThat(proven).isGreaterThan(3);
    }
}
