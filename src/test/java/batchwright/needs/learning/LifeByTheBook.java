package batchwright.needs.learning;

import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.dynamics.DailyBody;
import batchwright.needs.dynamics.StartingFat;
import batchwright.needs.weighing.DayIntake;
import batchwright.needs.weighing.DayMark;
import batchwright.needs.weighing.WeighedDay;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/**
 * Six weeks of somebody who eats by the plan, writes it down, and whose body needs so much more or less than the equation says. The body
 * is the model of Hall et al. 2011; the program sees only weighings and the book. Ill in the second week, away over Christmas: on these
 * days food is not written down, and on a journey there is no scale. Everything random comes from one seed: weighings that are off by 0.4
 * kg, one day in seven without one; food that is eaten otherwise than it is weighed out, by 3 % all along; a dinner out every Saturday
 * that is told off by 20 % all along; days that burn 6 % more or less. The sizes are choices of this test.
 */
public final class LifeByTheBook {
    public static final LocalDate FIRST = LocalDate.of(2026, 11, 29);
    public static final int DAYS = 42;
    /** As well as the eater can tell [kcal]. */
    public static final int DINNER_KCAL = 900;

    private static final LocalDate ILL_FROM = LocalDate.of(2026, 12, 6);
    private static final LocalDate ILL_TO = LocalDate.of(2026, 12, 12);
    private static final LocalDate AWAY_FROM = LocalDate.of(2026, 12, 24);
    private static final LocalDate AWAY_TO = LocalDate.of(2026, 12, 27);

    private final Random random;
    private final DailyBody body;
    private final double plannedError;
    private final double dinnerError;
    private final double spendsKcal;

    /** @param wrongByKcal what holds the weight is so much more than needs say */
    public LifeByTheBook(long seed, Needs needs, double wrongByKcal) {
        random = new Random(seed);
        Body told = needs.eater().body();
        spendsKcal = needs.total().kcal();
        body = new DailyBody(
                told.weight(),
                new Mass(StartingFat.of(told).share().percent()
                        / 100
                        * told.weight().kg()),
                new Energy(spendsKcal + wrongByKcal),
                needs.eater().activity().pal());
        plannedError = 0.03 * random.nextGaussian();
        dinnerError = 0.2 * random.nextGaussian();
    }

    public static List<LocalDate> days() {
        return FIRST.datesUntil(FIRST.plusDays(DAYS)).toList();
    }

    public static boolean isIll(LocalDate day) {
        return !day.isBefore(ILL_FROM) && !day.isAfter(ILL_TO);
    }

    public static boolean isAway(LocalDate day) {
        return !day.isBefore(AWAY_FROM) && !day.isAfter(AWAY_TO);
    }

    /** Saturdays at home. */
    public static boolean isDinnerOut(LocalDate day) {
        return day.getDayOfWeek().getValue() == 6 && !isIll(day) && !isAway(day);
    }

    /**
     * Lives a day.
     *
     * @param plannedKcal what the plan has for it
     * @return what the book has of it
     */
    public WeighedDay live(LocalDate day, double plannedKcal) {
        double seen = body.now().weightKg() + 0.4 * random.nextGaussian();
        boolean weighed = random.nextDouble() < 6.0 / 7 && !isAway(day);
        double out = isDinnerOut(day) ? DINNER_KCAL : 0;
        double planned = Math.max(0, plannedKcal - out);
        double eaten = planned * (1 + plannedError) + out * (1 + dinnerError);
        if (isIll(day)) {
            eaten = 0.7 * plannedKcal;
        } else if (isAway(day)) {
            eaten = 1.15 * plannedKcal;
        }
        body.eat(new Energy(eaten + 0.06 * spendsKcal * random.nextGaussian()));
        return new WeighedDay(
                day,
                weighed ? OptionalDouble.of(Math.round(10 * seen) / 10.0) : OptionalDouble.empty(),
                isIll(day) || isAway(day) ? DayIntake.NOT_LOGGED : new DayIntake(planned, out, true),
                isIll(day) ? Set.of(DayMark.ILL) : isAway(day) ? Set.of(DayMark.TRAVEL) : Set.of());
    }

    /** What the target would be if everything were known. */
    public int trueTargetKcal(Needs needs) {
        var eater = needs.eater()
                .withBody(needs.eater().body().withWeight(new Mass(body.now().weightKg())));
        return NeedsCalculator.needsOf(eater, body.holding())
                .target()
                .orElseThrow()
                .energyAimKcal();
    }
}
