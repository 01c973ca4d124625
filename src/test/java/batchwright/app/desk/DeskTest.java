package batchwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.answer.PlanAnswer.Status;
import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.Workspace;
import batchwright.plan.Plan;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;

class DeskTest {
    private static final String EATER = "lifter-gaining";
    private static final List<String> DISHES =
            List.of("chickpea_tagine", "tuna_bean_pasta", "lentil_ragu", "turkey_chili", "peanut_stew");
    /** As many as take some seconds; more on request. */
    private static final int MOVES = Integer.getInteger("batchwright.moves", 25);

    private static Desk desk() {
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
            if (quick.status() == Status.PLANNED) {
                assertThat(cost(quick)).as("%s", here).isEqualTo(cost(cold));
            } else if (cold.plan().isPresent() && quick.plan().isPresent()) {
                assertThat(cost(quick).orElseThrow())
                        .isGreaterThanOrEqualTo(cost(cold).orElseThrow());
            }
        }
    }

    private static Optional<Money> cost(PlanAnswer answer) {
        return answer.plan().map(Plan::cost);
    }
}
