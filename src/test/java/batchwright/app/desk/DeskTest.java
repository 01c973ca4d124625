package batchwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import batchwright.answer.PlanAnswer;
import batchwright.answer.PlanAnswer.Status;
import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.Refused;
import batchwright.app.TypedSum;
import batchwright.app.Workspace;
import batchwright.plan.Plan;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

class DeskTest {
    private static final String EATER = "lifter-gaining";
    private static final List<String> DISHES =
            List.of("chickpea_tagine", "tuna_bean_pasta", "lentil_ragu", "turkey_chili", "peanut_stew");
    /** As many as take some seconds; more on request. */
    private static final int MOVES = Integer.getInteger("batchwright.moves", 12);

    /** Of a quick answer: some thousandths of a second for a hundred. */
    private static final int MOST_RELAXATIONS = 4_000;

    static Desk desk() {
        return Desk.of(
                Workspace.open(Optional.empty(), Path.of("no-such-folder"), LocalDate.of(2026, 11, 29), note -> {}),
                new PlanQuestion(
                        List.of(EATER),
                        2,
                        Optional.empty(),
                        new CookingWanted(DishesWanted.only(DISHES), new DishNumber(1, 3)),
                        List.of(),
                        new PlanQuestion.HowLong(Duration.ofMinutes(1)),
                        InsightWanted.NONE));
    }

    /** What a desk remembers makes it quicker, never wrong. */
    @Test
    void a_desk_answers_as_a_search_that_remembers_nothing() {
        Desk desk = desk();
        desk.full(desk.asAsked(), Watch.NONE);
        var random = RandomGeneratorFactory.of("L64X128MixRandom").create(1);
        var walk = new SliderWalk(desk.asAsked(), EATER, DISHES, false, random);
        for (int move = 0; move < MOVES; move++) {
            Sliders here = walk.next();

            PlanAnswer quick = desk.quick(here);
            PlanAnswer full = desk.full(here, Watch.NONE);
            PlanAnswer cold = desk.fresh().full(here, Watch.NONE);

            assertThat(full.status()).as("%s", here).isEqualTo(cold.status());
            assertThat(cost(full)).as("%s", here).isEqualTo(cost(cold));
            assertThat(quick.audit().stream()).allMatch(audit -> audit.passed());
            assertThat(quick.proof().nodes()).as("%s", here).isLessThan(MOST_RELAXATIONS);
            if (quick.status() == Status.PLANNED) {
                assertThat(cost(quick)).as("%s", here).isEqualTo(cost(cold));
            } else if (cold.plan().isPresent() && quick.plan().isPresent()) {
                assertThat(cost(quick).orElseThrow())
                        .isGreaterThanOrEqualTo(cost(cold).orElseThrow());
            }
        }
    }

    /** Everything is looser or the same when a change is taken back: nothing needs to be searched again. */
    @Test
    void what_was_proven_is_not_searched_again() {
        Desk desk = desk();
        Sliders start = desk.asAsked();
        PlanAnswer first = desk.full(start, Watch.NONE);
        desk.full(start.withEater(EATER, EaterSliders.AS_WRITTEN.withProtein(2)), Watch.NONE);

        PlanAnswer again = desk.quick(start);

        assertThat(again.status()).isEqualTo(Status.PLANNED);
        assertThat(cost(again)).isEqualTo(cost(first));
        assertThat(again.proof().nodes()).isZero();
    }

    @Test
    void a_plan_that_is_too_dear_is_told_with_its_cost() {
        Desk desk = desk();
        PlanAnswer first = desk.full(desk.asAsked(), Watch.NONE);
        Sliders poor = desk.asAsked().withBudget(Optional.of(new TypedSum(BigDecimal.ONE)));

        assertThat(cost(desk.quick(poor))).isEqualTo(cost(first));
        assertThat(desk.full(poor, Watch.NONE).status()).isEqualTo(Status.NO_PLAN);
    }

    @Test
    void a_figure_that_no_profile_may_have_is_refused() {
        Desk desk = desk();
        Sliders start = desk.asAsked();

        assertThatThrownBy(() -> desk.quick(start.withEater(EATER, EaterSliders.AS_WRITTEN.withProtein(9))))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("protein 9.0 g per kg is more than 3.5");
        assertThatThrownBy(() -> desk.quick(start.withDays(0))).isInstanceOf(Refused.class);
        assertThatThrownBy(() ->
                        desk.quick(start.withEater(EATER, EaterSliders.AS_WRITTEN.withSnacks(Set.of("moonstone")))))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("moonstone");
    }

    /** Needs are worked out anew: whoever must not be planned for is not, however the slider came there. */
    @Test
    void a_goal_that_needs_refuse_is_not_planned() {
        Desk desk = desk();

        PlanAnswer answer = desk.quick(desk.asAsked().withEater(EATER, EaterSliders.AS_WRITTEN.withGoalKcal(-1500)));

        assertThat(answer.stoppedByCaution()).isTrue();
        assertThat(answer.plan()).isEmpty();
    }

    private static Optional<Money> cost(PlanAnswer answer) {
        return answer.plan().map(Plan::cost);
    }
}
