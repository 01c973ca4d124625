package batchwright.report.export;

import batchwright.audit.proof.PlanProof;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * A proof with what was asked, so that it can be checked by whoever has the same kitchen.
 *
 * @param costMinor what the plan costs that was found [minor units]; 0 when none was
 */
public record ProofFile(Asked asked, long costMinor, PlanProof proof) {
    /**
     * What a plan was asked for, in the words of the command line.
     *
     * @param eaters profiles by name or path
     * @param day the cooking day
     * @param reserve room to spare as a share
     */
    public record Asked(
            List<String> eaters, int days, Dishes dishes, List<String> shops, LocalDate day, BigDecimal reserve) {
        public Asked {
            eaters = List.copyOf(eaters);
            shops = List.copyOf(shops);
        }
    }

    /**
     * Dishes and foods by their short names.
     *
     * @param only that may be cooked; none for any
     * @param least dishes of the session
     * @param most dishes of the session
     */
    public record Dishes(
            List<String> only, List<String> with, List<String> without, List<String> lastTime, int least, int most) {
        public Dishes {
            only = List.copyOf(only);
            with = List.copyOf(with);
            without = List.copyOf(without);
            lastTime = List.copyOf(lastTime);
        }
    }
}
