package batchwright.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.app.CookingWanted;
import batchwright.app.DishNumber;
import batchwright.app.DishesWanted;
import batchwright.app.InsightWanted;
import batchwright.app.PlanQuestion;
import batchwright.app.Workspace;
import batchwright.plan.Watch;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How long quick answers take, on request: prints, and judges nothing but that there are answers. */
@EnabledIfSystemProperty(named = "batchwright.desk-speed", matches = "\\d+", disabledReason = "a benchmark")
class DeskSpeedTest {
    private static final int MOVES = Integer.getInteger("batchwright.desk-speed", 0);
    private static final int WARM_UP = 50;
    private static final List<String> DISHES = List.of("chickpea_tagine", "tuna_bean_pasta", "peanut_stew");

    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "lifter-gaining,desk-cutting"})
    void quick_answers_among_all_starter_dishes(String eaters) {
        List<String> names = List.of(eaters.split(",", -1));
        Desk desk = Desk.of(
                Workspace.open(Optional.empty(), Path.of("no-such-folder"), LocalDate.of(2026, 11, 29), note -> {}),
                new PlanQuestion(
                        names,
                        5,
                        Optional.empty(),
                        new CookingWanted(DishesWanted.ANY, new DishNumber(1, 3)),
                        List.of(),
                        new PlanQuestion.HowLong(Duration.ofSeconds(30)),
                        InsightWanted.NONE));
        desk.full(desk.asAsked(), Watch.NONE);
        var random = RandomGeneratorFactory.of("L64X128MixRandom").create(2);
        var walk = new SliderWalk(desk.asAsked(), names.get(0), DISHES, false, random);
        List<Double> clock = new ArrayList<>();
        List<Double> processor = new ArrayList<>();
        List<Double> relaxations = new ArrayList<>();
        int plans = 0;
        for (int move = 0; move < MOVES + WARM_UP; move++) {
            Sliders here = walk.next();
            long before = System.nanoTime();
            long cpu = cpu();
            PlanAnswer quick = desk.quick(here);
            if (move >= WARM_UP) {
                clock.add((System.nanoTime() - before) / 1e6);
                processor.add((cpu() - cpu) / 1e6);
                relaxations.add((double) quick.proof().nodes());
                plans += quick.plan().isPresent() ? 1 : 0;
            }
        }
        System.out.printf(Locale.ROOT, "%s: %d moves, %d with a plan%n", eaters, MOVES, plans);
        print("clock, ms", clock);
        print("processor, ms", processor);
        print("relaxations", relaxations);
        assertThat(plans).isPositive();
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void print(String what, List<Double> figures) {
        Collections.sort(figures);
        int last = figures.size() - 1;
        System.out.printf(
                Locale.ROOT,
                "  %s: median %.0f, nine of ten under %.0f, worst %.0f%n",
                what,
                figures.get(last / 2),
                figures.get(last * 9 / 10),
                figures.get(last));
    }
}
