package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;

/**
 * A warning about health.
 *
 * @param code stable name for scripts, such as under_18
 * @param text for people; defers to a clinician where one should decide
 * @param stopsPlanning whether the program refuses to plan
 */
public record Caution(String code, String text, boolean stopsPlanning, Citation source) {
    public static Caution stop(String code, String text, Citation source) {
        return new Caution(code, text, true, source);
    }

    public static Caution warn(String code, String text, Citation source) {
        return new Caution(code, text, false, source);
    }
}
