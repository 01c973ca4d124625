package batchwright.needs.weighing;

import batchwright.needs.TestEater;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.dynamics.DailyBody;
import batchwright.needs.dynamics.HallChow2011;
import batchwright.needs.dynamics.StartingFat;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/**
 * A person whose expenditure is known, because it is made up. The body is the model of Hall et al. 2011, integrated day by day, with its
 * water and its adaptation: not the linear model that the filter knows. Around it, all random: a total that differs from the equation,
 * body fat that differs from what is told, an adaptation to more or less food that differs from the mean, habits that drift, food that is planned and food that is not, richer weekends, days without a
 * log, records that err, days without weighing, noise that is alike from day to day, now and then an odd weight. The sizes are choices of
 * this test; a person of them is drawn by a seed.
 */
final class SimulatedPerson {
    private static final double PAL = 1.6;
    private static final double PRIOR_SHARE = 0.13;
    private static final double KJ_PER_KG_FAT = 39_500;
    private static final double KJ_PER_KG_LEAN = 7_600;
    private static final double KJ_PER_KG_GLYCOGEN = 17_600;
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5); // a Monday
    private static final int LATELY = 14;

    /** What is varied between tests; all else is drawn. */
    record Habits(double recordedShare, double priorErrorShare, double weekendKcal, double weighedShare) {
        static final Habits USUAL = new Habits(1, PRIOR_SHARE, 250, 0.8);

        Habits underLogging(double share) {
            return new Habits(1 - share, priorErrorShare, weekendKcal, weighedShare);
        }

        Habits asTheEquationSays() {
            return new Habits(recordedShare, 0.001, weekendKcal, weighedShare);
        }

        Habits withWeekend(double kcal) {
            return new Habits(recordedShare, priorErrorShare, kcal, weighedShare);
        }
    }

    private final Random random;
    private final Habits habits;
    private final Prior prior;
    private final DailyBody body;
    private final List<WeighedDay> days = new ArrayList<>();
    private final List<Double> eaten = new ArrayList<>();
    private final List<Double> usedKcal = new ArrayList<>();
    private final List<BodyState> states = new ArrayList<>();
    private final double unplannedShare;
    private final double plannedError;
    private final double unplannedError;
    private final double unloggedShare;
    private final double adapts;
    private final double noiseKg;
    private final double noiseStays;
    private double target;
    private double noise;
    private double habitKcal;

    SimulatedPerson(long seed, Habits habits) {
        this.random = new Random(seed);
        this.habits = habits;
        boolean man = random.nextBoolean();
        double cm = (man ? 178 : 165) + 7 * random.nextGaussian();
        double bmi = 21 + 11 * random.nextDouble();
        Body told =
                TestEater.body(man ? Sex.MALE : Sex.FEMALE, bmi * cm * cm / 10_000, cm, 20 + 40 * random.nextDouble());
        double equation = told.weight().kg() * (man ? 33 : 30);
        this.prior = new Prior(equation, PRIOR_SHARE * equation, HallChow2011.of(told, new Energy(equation), PAL));
        double truth = equation * (1 + habits.priorErrorShare() * random.nextGaussian());
        double fat = StartingFat.of(told).share().percent() + 4 * random.nextGaussian();
        this.body = new DailyBody(
                told.weight(), new Mass(Math.max(8, fat) / 100 * told.weight().kg()), new Energy(truth), PAL);
        this.states.add(body.now());
        this.target = equation - 600 + 1000 * random.nextDouble();
        this.unplannedShare = 0.05 + 0.3 * random.nextDouble();
        this.plannedError = 0.03 * random.nextGaussian();
        this.unplannedError = 0.2 * random.nextGaussian();
        this.unloggedShare = 0.05 + 0.1 * random.nextGaussian();
        this.adapts = 0.06 * random.nextGaussian();
        this.noiseKg = 0.25 + 0.35 * random.nextDouble();
        this.noiseStays = 0.1 + 0.4 * random.nextDouble();
        this.noise = noiseKg * random.nextGaussian();
    }

    void live(int count) {
        for (int i = 0; i < count; i++) {
            liveADay();
        }
    }

    /** From tomorrow on. */
    void eat(double kcal) {
        target = kcal;
    }

    private void liveADay() {
        LocalDate date = FIRST.plusDays(days.size());
        boolean weekend = date.getDayOfWeek().getValue() > 5;
        boolean logged = random.nextDouble() > 0.12;
        double planned = (1 - unplannedShare) * target;
        double unplanned = Math.max(
                0,
                unplannedShare * target * (1 + 0.4 * random.nextGaussian())
                        + (weekend ? habits.weekendKcal() : -0.4 * habits.weekendKcal())
                        + (logged ? 0 : unloggedShare * target));
        double kcal = planned * (1 + plannedError) + unplanned * (1 + unplannedError);
        days.add(new WeighedDay(date, weighing(), record(logged, planned, unplanned), Set.of()));
        double used = adapts * (kcal - body.total().kcal());
        habitKcal += 8 * random.nextGaussian();
        double spentMore = habitKcal + used + 0.06 * prior.kcal() * random.nextGaussian();
        eaten.add(kcal - habitKcal - used);
        usedKcal.add(used);
        body.eat(new Energy(kcal - spentMore));
        states.add(body.now());
    }

    private DayIntake record(boolean logged, double planned, double unplanned) {
        double recorded = unplanned * (1 + 0.25 * random.nextGaussian());
        return logged
                ? new DayIntake(habits.recordedShare() * planned, habits.recordedShare() * Math.max(0, recorded), true)
                : DayIntake.NOT_LOGGED;
    }

    private OptionalDouble weighing() {
        noise = noiseStays * noise + Math.sqrt(1 - noiseStays * noiseStays) * noiseKg * random.nextGaussian();
        double odd = random.nextDouble() < 0.01 ? 2 * Math.signum(random.nextGaussian()) : 0;
        double seen = Math.round(10 * (last().weightKg() + noise + odd)) / 10.0;
        return random.nextDouble() < habits.weighedShare() ? OptionalDouble.of(seen) : OptionalDouble.empty();
    }

    private BodyState last() {
        return states.get(states.size() - 1);
    }

    Prior prior() {
        return prior;
    }

    List<WeighedDay> days() {
        return days;
    }

    double trueWeightKg() {
        return last().weightKg();
    }

    /** What would hold the weight of this morning [kcal/d]. */
    double trueHolds() {
        return body.holding().kcal() + habitKcal;
    }

    /** What was burnt in the last two weeks [kcal/d]: eaten less stored. */
    double trueNow() {
        int end = states.size() - 1;
        double stored = (storedKj(states.get(end)) - storedKj(states.get(end - LATELY))) / Energy.KJ_PER_KCAL;
        return lately(eaten) + lately(usedKcal) - stored / LATELY + habitKcal;
    }

    private static double lately(List<Double> kcal) {
        return kcal.subList(kcal.size() - LATELY, kcal.size()).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    private static double storedKj(BodyState state) {
        return KJ_PER_KG_FAT * state.fatKg()
                + KJ_PER_KG_LEAN * state.tissueKg()
                + KJ_PER_KG_GLYCOGEN * state.glycogenKg();
    }
}
