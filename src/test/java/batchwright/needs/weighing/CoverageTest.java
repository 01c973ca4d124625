package batchwright.needs.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.weighing.SimulatedPerson.Habits;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

/** Whether the bands hold what they say, over simulated people whose expenditure is known. */
class CoverageTest {
    private static final int PEOPLE = 2000;
    private static final int SIX_WEEKS = 42;

    private record Found(Expenditure said, double now, double holds) {}

    private static List<Found> people(Habits habits, int count, int days) {
        return IntStream.range(0, count).mapToObj(seed -> {
            var person = new SimulatedPerson(seed, habits);
            person.live(days);
            Expenditure said = Expenditure.of(person.prior(), person.days()).orElseThrow();
            return new Found(said, person.trueNow(), person.trueHolds());
        }).toList();
    }

    private static String figures(List<Found> found) {
        var now = new DescriptiveStatistics();
        var holds = new DescriptiveStatistics();
        var sd = new DescriptiveStatistics();
        found.forEach(f -> {
            now.addValue(f.said().now().likely() - f.now());
            holds.addValue(f.said().holds().likely() - f.holds());
            sd.addValue(f.said().holds().sd());
        });
        return String.format(Locale.ROOT, "now bias %.1f sd %.1f cover %.3f; holds bias %.1f sd %.1f cover %.3f; said sd %.1f; short %.3f",
                now.getMean(), now.getStandardDeviation(), found.stream().filter(f -> f.said().now().holds(f.now())).count() / (double) found.size(),
                holds.getMean(), holds.getStandardDeviation(), found.stream().filter(f -> f.said().holds().holds(f.holds())).count() / (double) found.size(), sd.getMean(),
                found.stream().filter(f -> f.said().recordShortPercent().isPresent()).count() / (double) found.size());
    }

    @Test
    void look() {
        int n = Integer.getInteger("people", 400);
        long t = System.nanoTime();
        for (int days : new int[] {15, 28, 42, 84}) {
            System.out.println(days + " " + figures(people(Habits.USUAL, n, days)));
        }
        System.out.println("no weekend " + figures(people(Habits.USUAL.withWeekend(0), n, 42)));
        System.out.println("weekend 700 " + figures(people(Habits.USUAL.withWeekend(700), n, 42)));
        System.out.println("under " + figures(people(Habits.USUAL.underLogging(.15), n, 42)));
        System.out.println("under exact " + figures(people(Habits.USUAL.underLogging(.15).asTheEquationSays(), n, 42)));
        System.out.println("exact " + figures(people(Habits.USUAL.asTheEquationSays(), n, 42)));
        System.out.println((System.nanoTime() - t) / 1e9);
    }
}
