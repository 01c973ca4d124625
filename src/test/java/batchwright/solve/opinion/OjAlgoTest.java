package batchwright.solve.opinion;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Proof;
import batchwright.plan.SecondOpinion;
import batchwright.plan.SecondOpinion.Verdict;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import batchwright.solve.RandomProblems;
import batchwright.solve.mip.MipModel;
import batchwright.solve.whole.WholeModel;
import java.time.Duration;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small random kitchens: ojAlgo never contradicts what is right, and does contradict what is made wrong. */
class OjAlgoTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_right_answer_is_not_contradicted(long seed) {
        PlanRequest request = RandomProblems.of(seed).withPatience(PATIENCE);
        PlanResult result = new BatchPlanner().plan(request);

        SecondOpinion opinion = new OjAlgo().of(request, result.best(), result.proof());

        assertThat(opinion.verdict()).isNotEqualTo(Verdict.DISAGREES);
        opinion.bound()
                .ifPresent(bound ->
                        assertThat(bound).isLessThanOrEqualTo(result.proof().cost()));
    }

    @Test
    void a_plan_that_is_called_cheapest_but_is_not_is_contradicted() {
        PlanRequest request = RandomProblems.of(withAPlan()).withPatience(PATIENCE);
        Plan plan = new BatchPlanner().plan(request).best().orElseThrow();
        Money dearer = plan.cost().plus(new Money(1));
        var claimed = new Proof(dearer, dearer, 0, Duration.ZERO);

        assertThat(new OjAlgo().of(request, Optional.of(plan), claimed).verdict())
                .isEqualTo(Verdict.DISAGREES);
    }

    @Test
    void no_plan_where_there_is_one_is_contradicted() {
        PlanRequest request = RandomProblems.of(withAPlan()).withPatience(PATIENCE);

        assertThat(new OjAlgo().of(request, Optional.empty(), Proof.NONE).verdict())
                .isEqualTo(Verdict.DISAGREES);
    }

    private static long withAPlan() {
        return seeds().filter(seed ->
                        new BatchPlanner().plan(RandomProblems.of(seed)).best().isPresent())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatever_the_multipliers_no_bound_is_above_the_cheapest_plan(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        MipModel model = WholeModel.of(request).model();
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        Optional<Plan> plan = new BatchPlanner().plan(request).best();

        double[] any = random.doubles(model.rowCount(), -2, 2).toArray();

        plan.ifPresent(p -> assertThat(WeakDuality.bound(model, any))
                .isLessThanOrEqualTo((double) p.cost().minor()));
    }
}
