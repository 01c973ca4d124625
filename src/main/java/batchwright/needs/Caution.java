package batchwright.needs;

/**
 * A warning about health.
 *
 * @param code stable name for scripts, such as under_18
 * @param text for people; defers to a clinician where one should decide
 * @param stopsPlanning whether the program refuses to plan
 */
public record Caution(String code, String text, boolean stopsPlanning, Citation source) {
    static Caution stop(String code, String text, Citation source) {
        return new Caution(code, text, true, source);
    }

    static Caution warn(String code, String text, Citation source) {
        return new Caution(code, text, false, source);
    }
}
