package batchwright.person;

/**
 * What the eater wants the body weight to do. All three forms are signed: gain is positive, loss negative, hold zero.
 */
public sealed interface Goal {
    Goal HOLD = new EnergyADay(0);

    /** One result for each form of a goal. */
    interface Cases<R> {
        R percentAWeek(PercentAWeek goal);

        R kgAWeek(KgAWeek goal);

        R energyADay(EnergyADay goal);
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
}
