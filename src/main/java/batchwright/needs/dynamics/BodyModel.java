package batchwright.needs.dynamics;

import static batchwright.needs.dynamics.Hall2011Parameters.ADAPTATION;
import static batchwright.needs.dynamics.Hall2011Parameters.DIGESTION;

import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * One body by {@link Hall2011}: its weight at an intake, and the intake for a weight. More intake is more weight on every day after, so
 * that there is one answer; Brent's method finds it.
 */
public final class BodyModel {
    /** How near a solved intake is [kcal/d] and a solved day [d]; far below what is printed. */
    static final double CLOSE = 1e-3;

    /** Intakes are looked for between these parts of the total; no goal may ask for anything outside. */
    private static final double LEAST_OF_TOTAL = 0.25;

    private static final double MOST_OF_TOTAL = 4;
    private static final int MOST_STEPS = 100;
    /** By then a weight has settled. */
    private static final double IN_THE_END_DAYS = 50 * 365;
    /** As far ahead as a day is looked for. */
    private static final int MOST_DAYS = 10 * 365;

    private final Baseline baseline;

    BodyModel(Baseline baseline) {
        this.baseline = baseline;
    }

    /**
     * @param total energy a day that holds the weight
     * @param pal total / resting energy
     */
    public static BodyModel of(Body body, StartingFat fat, Energy total, double pal) {
        return new BodyModel(Baseline.of(body.weight(), fat.of(body.weight()), total, pal));
    }

    /** With known body fat, or an estimate from BMI. */
    public static BodyModel of(Body body, Energy total, double pal) {
        return of(body, StartingFat.of(body), total, pal);
    }

    public BodyState start() {
        return baseline.start();
    }

    /** What holds the weight of the start. */
    public Energy total() {
        return Energy.ofKilojoules(baseline.intakeKj());
    }

    /** The body so many days, more than 0, after another one, when each day has this intake. */
    public BodyState after(double days, Energy intake, BodyState from) {
        return BodyState.of(Integration.FINE.after(days, new Hall2011(baseline, intake), from.figures()));
    }

    /** The body in the end, when the intake is never changed. */
    public BodyState settled(Energy intake) {
        return after(IN_THE_END_DAYS, intake, start());
    }

    /**
     * The intake that would hold a body's weight from now on [kcal/d]: what it burns once it is used to that intake. Solved from EE = EI
     * with AT = beta_AT dEI and nothing built.
     */
    public Energy holding(BodyState now) {
        double settles = DIGESTION + ADAPTATION;
        return Energy.ofKilojoules((baseline.upkeepKj(now) - settles * baseline.intakeKj()) / (1 - settles));
    }

    /**
     * The even intake that leads a body to a weight.
     *
     * @param days more than 0
     * @return kcal a day; empty when no intake between a quarter and four times the total does
     */
    public OptionalDouble intakeFor(double kg, double days, BodyState from) {
        double total = total().kcal();
        return root(
                kcal -> after(days, new Energy(kcal), from).weightKg() - kg,
                LEAST_OF_TOTAL * total,
                MOST_OF_TOTAL * total);
    }

    /**
     * The first day, from the start, on which an even intake has led to a weight, from above or below.
     *
     * @return empty when it does not within ten years
     */
    public OptionalInt dayOf(double kg, Energy intake) {
        OptionalDouble day = root(days -> after(days, intake, start()).weightKg() - kg, CLOSE, MOST_DAYS);
        return day.isPresent() ? OptionalInt.of((int) Math.ceil(day.getAsDouble() - CLOSE)) : OptionalInt.empty();
    }

    private static OptionalDouble root(UnivariateFunction function, double least, double most) {
        if (function.value(least) * function.value(most) > 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(new BrentSolver(CLOSE).solve(MOST_STEPS, function, least, most));
    }
}
