package batchwright.needs.weighing;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.learning.Learned;
import batchwright.person.Sex;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/** A made-up record for tests of what is shown: somebody who needs less than the equation says, with two ill days and a typing error. */
public final class SixWeeks {
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);

    private SixWeeks() {}

    public static Learned of(int days) {
        return learned(days, -0.15);
    }

    /** 2 % of weight a week. */
    public static Learned falling() {
        return learned(42, -1.7);
    }

    private static Learned learned(int count, double kgAWeek) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 85, 180, 35))
                .pal(1.6)
                .percentAWeek(-0.5)
                .needs();
        var random = new Random(7);
        List<WeighedDay> days = new ArrayList<>();
        for (int day = 0; day < count; day++) {
            days.add(day(day, kgAWeek, random, needs.target().orElseThrow().energyAimKcal()));
        }
        return Learned.of(needs, days, List.of(), FIRST.plusDays(count - 1L)).orElseThrow();
    }

    private static WeighedDay day(int day, double kgAWeek, Random random, double kcal) {
        double kg = 85 + kgAWeek * day / 7 + 0.35 * random.nextGaussian();
        double seen = day == 30 ? 8.5 : Math.round(10 * kg) / 10.0;
        boolean weighed = day == 30 || random.nextDouble() < 0.85;
        boolean logged = random.nextDouble() < 0.9;
        double other = 300 + 150 * random.nextDouble();
        return new WeighedDay(
                FIRST.plusDays(day),
                weighed ? OptionalDouble.of(seen) : OptionalDouble.empty(),
                logged ? new DayIntake(kcal - 350, other, true) : DayIntake.NOT_LOGGED,
                day == 10 || day == 11 ? Set.of(DayMark.ILL) : Set.of());
    }
}
