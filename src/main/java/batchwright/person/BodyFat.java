package batchwright.person;

import batchwright.quantity.Share;
import java.util.Optional;
import java.util.OptionalDouble;

/** Body fat: told by the eater, told but hard to believe, estimated, or still to be estimated because the eater asks for it. */
public sealed interface BodyFat {
    /** The eater wants an estimate. */
    BodyFat ASKED_FOR = new AskedFor();

    /** fat / body weight; empty until it is estimated. */
    Optional<Share> share();

    /** Standard deviation of its error [percentage points of body weight]; empty until it is estimated. */
    OptionalDouble errorPoints();

    /** Whether it says more of this body than weight, height, sex and age do. */
    boolean tellsMoreThanBmi();

    /** As the eater says. */
    record Measured(Share fat, FatMethod method) implements BodyFat {
        /** By a method that is not said. */
        public Measured(Share fat) {
            this(fat, FatMethod.NOT_SAID);
        }

        @Override
        public Optional<Share> share() {
            return Optional.of(fat);
        }

        @Override
        public OptionalDouble errorPoints() {
            return OptionalDouble.of(method.errorPoints());
        }

        @Override
        public boolean tellsMoreThanBmi() {
            return method.measures();
        }
    }

    /**
     * As the eater says, but so far from what such bodies have that nothing is built on it.
     *
     * @param widened error that reaches from it to the usual [percentage points of body weight]
     */
    record Doubted(Measured said, double widened) implements BodyFat {
        @Override
        public Optional<Share> share() {
            return said.share();
        }

        @Override
        public OptionalDouble errorPoints() {
            return OptionalDouble.of(widened);
        }

        @Override
        public boolean tellsMoreThanBmi() {
            return false;
        }
    }

    /** To be estimated. */
    record AskedFor() implements BodyFat {
        @Override
        public Optional<Share> share() {
            return Optional.empty();
        }

        @Override
        public OptionalDouble errorPoints() {
            return OptionalDouble.empty();
        }

        @Override
        public boolean tellsMoreThanBmi() {
            return false;
        }
    }

    /**
     * By a published formula.
     *
     * @param method its authors and year
     * @param error standard error [percentage points of body weight], plus or minus
     * @param tellsMoreThanBmi whether the formula uses more than weight, height, sex and age
     */
    record Estimated(Share fat, String method, double error, boolean tellsMoreThanBmi) implements BodyFat {
        @Override
        public Optional<Share> share() {
            return Optional.of(fat);
        }

        @Override
        public OptionalDouble errorPoints() {
            return OptionalDouble.of(error);
        }
    }
}
