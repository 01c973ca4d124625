package batchwright.person;

import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** What the eater wants body weight to do. Rates are signed: gain is positive, loss negative, hold zero. */
public sealed interface Goal {
    Goal HOLD = new EnergyADay(0);

    /** One result for each form of a goal. */
    interface Cases<R> {
        R percentAWeek(PercentAWeek goal);

        R kgAWeek(KgAWeek goal);

        R energyADay(EnergyADay goal);

        R reachWeight(ReachWeight goal);
    }

    <R> R match(Cases<R> cases);

    /** Change as per cent of body weight a week. */
    record PercentAWeek(double percent) implements Goal {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.percentAWeek(this);
        }
    }

    /** Change in kg a week. */
    record KgAWeek(double kg) implements Goal {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.kgAWeek(this);
        }
    }

    /** Surplus (positive) or deficit (negative) in kcal a day. */
    record EnergyADay(double kcal) implements Goal {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.energyADay(this);
        }
    }

    /**
     * A weight on a day.
     *
     * @param from the day that is counted from, with the weight of today
     * @param by later than that
     */
    record ReachWeight(Mass weight, LocalDate from, LocalDate by) implements Goal {
        private static final double DAYS_A_WEEK = 7;

        public ReachWeight {
            if (!by.isAfter(from)) {
                throw new IllegalArgumentException("by (" + by + ") must be after from (" + from + ").");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.reachWeight(this);
        }

        public double weeks() {
            return ChronoUnit.DAYS.between(from, by) / DAYS_A_WEEK;
        }
    }
}
