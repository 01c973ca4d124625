package batchwright.needs;

/**
 * A warning about health.
 *
 * @param code stable name for scripts, such as under_18
 * @param text for people; defers to a clinician where one should decide
 * @param stopsPlanning whether the program refuses to plan
 */
public record Caution(String code, String text, boolean stopsPlanning, Citation source) {}
