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
 * @param caveats why it may not fit this body; empty when it was made for such bodies
 */
public record BodyFatEstimate(String method, Share fat, double errorPoints, Citation source, List<String> caveats) {}
