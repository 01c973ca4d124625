package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import java.util.List;

/**
 * A warning about health.
 *
 * @param code stable name for scripts, such as under_18
 * @param text for people; defers to a clinician where one should decide
 * @param stopsPlanning whether the program refuses to plan
 * @param hidesFigures whether it shows no figures of the eater's body and energy either, because they could do harm or would be
 *     wrong; then neither text nor source holds one
 * @param asks keys of a profile that may lift it; empty unless it waits for a fact
 */
public record Caution(
        String code, String text, boolean stopsPlanning, boolean hidesFigures, List<String> asks, Citation source) {
    /** One that does not hide the figures. */
    public Caution(String code, String text, boolean stopsPlanning, Citation source) {
        this(code, text, stopsPlanning, false, List.of(), source);
    }

    /** One that asks nothing. */
    public Caution(String code, String text, boolean stopsPlanning, boolean hidesFigures, Citation source) {
        this(code, text, stopsPlanning, hidesFigures, List.of(), source);
    }

    public static Caution stop(String code, String text, Citation source) {
        return new Caution(code, text, true, source);
    }

    /** Stops planning, and shows the way to help instead of figures. */
    public static Caution hide(String code, String text, Citation source) {
        return new Caution(code, text, true, true, List.of(), source);
    }

    public static Caution warn(String code, String text, Citation source) {
        return new Caution(code, text, false, source);
    }
}
