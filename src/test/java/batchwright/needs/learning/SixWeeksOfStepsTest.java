package batchwright.needs.learning;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.weighing.WeighedDay;
import batchwright.person.Sex;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Where a target stands after the six weeks of {@link LifeByTheBook}, when each step that is offered is adopted. {@code
 * -Dbatchwright.seeds=200} lives as many lives of each kind and prints how many end within 100 kcal of what is true; docs/weighing.md
 * has the figures.
 */
class SixWeeksOfStepsTest {
    private static final int SEEDS = Integer.getInteger("batchwright.seeds", 20);
    private static final int NEAR_KCAL = 100;
    private static final Needs HOLDS =
            TestEater.of(TestEater.body(Sex.FEMALE, 64, 165, 45)).pal(1.76).needs();
    private static final Needs GAINS = TestEater.of(TestEater.body(Sex.MALE, 74, 181, 27))
            .pal(1.76)
            .percentAWeek(0.25)
            .needs();

    /** How far the last target is from what is true. */
    private static int off(long seed, Needs needs, double wrongByKcal) {
        var life = new LifeByTheBook(seed, needs, wrongByKcal);
        List<WeighedDay> days = new ArrayList<>();
        List<TargetStep> steps = new ArrayList<>();
        int aim = needs.target().orElseThrow().energyAimKcal();
        for (LocalDate day : LifeByTheBook.days()) {
            days.add(life.live(day, aim));
            if (mayStep(days, steps, day)
                    && Learned.of(needs, days, steps, day).orElseThrow().advice() instanceof TargetAdvice.Offer offer) {
                steps.add(new TargetStep(day, offer.holdsKcal()));
                aim = offer.toKcal();
            }
        }
        return aim - life.trueTargetKcal(needs);
    }

    /** Only to save time: else there is no offer. */
    private static boolean mayStep(List<WeighedDay> days, List<TargetStep> steps, LocalDate day) {
        return days.size() >= CarefulTarget.DAYS_BETWEEN_STEPS
                && (steps.isEmpty()
                        || !day.isBefore(
                                steps.get(steps.size() - 1).date().plusDays(CarefulTarget.DAYS_BETWEEN_STEPS)));
    }

    private static double shareNear(Needs needs, double wrongByKcal) {
        int[] off = IntStream.range(0, SEEDS)
                .map(seed -> off(seed, needs, wrongByKcal))
                .toArray();
        long near = IntStream.of(off).filter(o -> Math.abs(o) <= NEAR_KCAL).count();
        System.out.printf(
                Locale.ROOT,
                "holds with %.0f kcal, in truth %+.0f: %d of %d within 100 kcal, on the mean %+.0f%n",
                needs.total().kcal(),
                wrongByKcal,
                near,
                SEEDS,
                IntStream.of(off).average().orElse(0));
        return (double) near / SEEDS;
    }

    @Test
    void two_steps_make_up_for_most_of_300_kcal() {
        assertThat(shareNear(GAINS, 300)).isGreaterThan(0.6);
        assertThat(shareNear(HOLDS, 300)).isGreaterThan(0.45);
        assertThat(shareNear(GAINS, -300)).isGreaterThan(0.6);
        assertThat(shareNear(HOLDS, -300)).isGreaterThan(0.35);
    }

    @Test
    void a_target_that_is_right_stays_near() {
        assertThat(shareNear(GAINS, 0)).isGreaterThan(0.7);
        assertThat(shareNear(HOLDS, 0)).isGreaterThan(0.75);
    }
}
