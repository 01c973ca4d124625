package batchwright.needs.bodyfat;

import batchwright.needs.evidence.Citation;
import batchwright.quantity.Share;
import java.util.List;

/**
 * Body fat by one published equation.
 *
 * @param method authors and year
 * @param fat fat / body weight
 * @param errorPoints standard error of estimate [percentage points of body weight], plus or minus
 * @param possible whether the formula's own answer can be; if not, {@code fat} is the nearest that can
 * @param tellsMoreThanBmi whether it uses more than weight, height, sex and age
 * @param caveats why it may not fit this body; empty when it was made for such bodies
 */
public record BodyFatEstimate(
        String method,
        Share fat,
        double errorPoints,
        boolean possible,
        boolean tellsMoreThanBmi,
        Citation source,
        List<String> caveats) {}
