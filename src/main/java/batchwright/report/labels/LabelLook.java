package batchwright.report.labels;

import batchwright.report.labels.LabelLine.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * One way to set a label: three sizes of type [points], and how much is said.
 *
 * <p>In {@link #ALL} the first is the best. {@link #FROM_A_METRE} has capitals of 4.7 mm, 16 minutes of arc at 1 m: the least that ISO
 * 9241-3 allows (read in a secondary source); {@link #AT_THE_FRIDGE} has 3.4 mm, the same at 0.7 m. Small print has an x-height of 1.2 mm or
 * more, as Regulation (EU) 1169/2011, article 13, asks of labels in shops, in all looks but the last few, which nothing but long names
 * and many allergens on a small label need. All with capitals of 0.69 and an x-height of 0.528 of the size, as Liberation Sans has them.
 *
 * @param big of who and when
 * @param middle of the dish and of thawing
 * @param small of all else
 * @param most letters of a name, or as many as there are
 */
public record LabelLook(double big, double middle, double small, Wording wording, int most) {
    private static final double MM_PER_POINT = 25.4 / 72;
    static final double FROM_A_METRE = 19.5;
    static final double AT_THE_FRIDGE = 14;
    static final double SMALL_PRINT = 6.5;
    private static final int WHOLE = Integer.MAX_VALUE;

    /** Height of a line of type, as a multiple of its size. */
    public static final double LINE = 1.17;

    static final List<LabelLook> ALL = all();

    private static List<LabelLook> all() {
        List<LabelLook> all = new ArrayList<>();
        for (double small : new double[] {9, 8}) {
            all.add(new LabelLook(24, small * 1.5, small, Wording.FULL, WHOLE));
        }
        for (Wording wording : Wording.values()) {
            for (double small : new double[] {8, 7.5, 7, SMALL_PRINT}) {
                all.add(new LabelLook(FROM_A_METRE, small * 1.4, small, wording, WHOLE));
            }
        }
        for (double big : new double[] {17, AT_THE_FRIDGE}) {
            for (Wording wording : List.of(Wording.SHORT, Wording.BRIEF, Wording.LEAST)) {
                for (double middle : new double[] {10, 9, 8}) {
                    all.add(new LabelLook(big, middle, SMALL_PRINT, wording, WHOLE));
                }
            }
        }
        for (double big : new double[] {17, AT_THE_FRIDGE, 11, 9}) {
            for (int most : new int[] {60, 24}) {
                all.add(new LabelLook(big, 8, SMALL_PRINT, Wording.LEAST, most));
            }
        }
        for (double small : new double[] {6, 5.5, 5}) {
            all.add(new LabelLook(9, 7, small, Wording.LEAST, 24));
        }
        return List.copyOf(all);
    }

    /** Whether names are cut where they are too long for a line. */
    boolean cuts() {
        return most < WHOLE;
    }

    /** The class of such labels in the style sheet. */
    public String id() {
        return "look-" + ALL.indexOf(this);
    }

    /** Size of type [points]. */
    public double points(Role role) {
        return switch (role) {
            case WHO, WHEN -> big;
            case TITLE, THAW -> middle;
            case STRONG, PLAIN -> small;
        };
    }

    /** The same [mm]. */
    public double mm(Role role) {
        return points(role) * MM_PER_POINT;
    }
}
