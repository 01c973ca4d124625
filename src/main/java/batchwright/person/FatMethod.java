package batchwright.person;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * How a figure of body fat was found, with the standard deviation of its error for one person [percentage points of body weight].
 * The figures are rounded up from what was published; the rounding is a choice of this program.
 *
 * <ul>
 *   <li>DXA: against four compartments 4C = 0.862 DXA + 4.417, SEE 1.6, single people -2.6 to +7.3 (152 adults; PubMed 12531910). Air
 *       displacement: SEE at most 2.3 against five compartments (Tinsley 2020, 170 adults).
 *   <li>Callipers: SEE 3.5 (men) and 3.9 (women) where they were derived (from memory); in other hands they read 2 to 7 points low
 *       (Peterson 2003, 681 adults).
 *   <li>Tape: SEE 3.5 to 3.7 against underwater weighing (Hodgdon and Beckett 1984); limits of agreement about 7 to 8 (from memory).
 *   <li>Scale, any electrical impedance: limits of agreement 15 to 20 points wide, so 4 to 5 (review of 12 studies, PMC12922097).
 *   <li>Guess by eye: no published error was found; the figure is a choice.
 * </ul>
 */
public enum FatMethod {
    DXA(2.5, "DXA scan", "4-compartment comparison, PubMed 12531910"),
    AIR(2.5, "air displacement", "Tinsley 2020"),
    CALLIPERS(4.0, "callipers", "Peterson 2003; derivation SEE from memory"),
    TAPE(4.0, "tape", "Hodgdon, Beckett 1984; spread against DXA from memory"),
    SCALE(4.5, "scale with electrodes", "review of 12 studies, PMC12922097"),
    GUESS(6.0, "guess", "choice of this program: no published error was found"),
    /** Profiles take only what was measured, so the widest error of what measures. */
    NOT_SAID(4.5, "method not said", "choice of this program: the widest of the methods that measure");

    private final double errorPoints;
    private final String words;
    private final String source;

    FatMethod(double errorPoints, String words, String source) {
        this.errorPoints = errorPoints;
        this.words = words;
        this.source = source;
    }

    /** As files say it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** In a sentence. */
    public String words() {
        return words;
    }

    /** Standard deviation [percentage points of body weight]. */
    public double errorPoints() {
        return errorPoints;
    }

    /** Of the error. */
    public String source() {
        return source;
    }

    public boolean measures() {
        return this != GUESS;
    }

    /** By its label; there is none for what was not said. */
    public static Optional<FatMethod> of(String label) {
        return Arrays.stream(values())
                .filter(method -> method != NOT_SAID && method.label().equals(label))
                .findFirst();
    }
}
