package batchwright.person;

import batchwright.quantity.Share;
import java.util.Optional;

/** Body fat: measured, estimated, or still to be estimated because the eater asks for it. */
public sealed interface BodyFat {
    /** The eater wants an estimate. */
    BodyFat ASKED_FOR = new AskedFor();

    /** fat / body weight; empty until it is estimated. */
    Optional<Share> share();

    /** Whether it says more of this body than weight, height, sex and age do. */
    boolean tellsMoreThanBmi();

    /** As the eater says. */
    record Measured(Share fat) implements BodyFat {
        @Override
        public Optional<Share> share() {
            return Optional.of(fat);
        }

        @Override
        public boolean tellsMoreThanBmi() {
            return true;
        }
    }

    /** To be estimated. */
    record AskedFor() implements BodyFat {
        @Override
        public Optional<Share> share() {
            return Optional.empty();
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
     * @param errorPoints standard error [percentage points of body weight], plus or minus
     * @param tellsMoreThanBmi whether the formula uses more than weight, height, sex and age
     */
    record Estimated(Share fat, String method, double errorPoints, boolean tellsMoreThanBmi) implements BodyFat {
        @Override
        public Optional<Share> share() {
            return Optional.of(fat);
        }
    }
}
