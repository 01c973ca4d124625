package batchwright.schedule.search;

import java.util.Arrays;
import java.util.BitSet;

/**
 * For each activity the earliest and the latest minute it may start, and of some pairs in conflict which is first. Windows only get
 * smaller.
 */
final class Windows {
    private final int[] earliest;
    private final int[] latest;
    private final BitSet orders;
    private boolean changed;

    private Windows(int[] earliest, int[] latest, BitSet orders) {
        this.earliest = earliest;
        this.latest = latest;
        this.orders = orders;
    }

    /** All windows as wide as can be. */
    static Windows open(int activities, int latest) {
        var late = new int[activities];
        Arrays.fill(late, latest);
        return new Windows(new int[activities], late, new BitSet());
    }

    Windows copy() {
        return new Windows(earliest.clone(), latest.clone(), (BitSet) orders.clone());
    }

    void order(int first, int second) {
        orders.set(first * earliest.length + second);
    }

    boolean isOrdered(int first, int second) {
        return orders.get(first * earliest.length + second);
    }

    int earliest(int i) {
        return earliest[i];
    }

    int latest(int i) {
        return latest[i];
    }

    boolean isFixed(int i) {
        return earliest[i] == latest[i];
    }

    /** False when nothing is left. */
    boolean notBefore(int i, int minute) {
        if (minute > earliest[i]) {
            earliest[i] = minute;
            changed = true;
        }
        return earliest[i] <= latest[i];
    }

    /** False when nothing is left. */
    boolean notAfter(int i, int minute) {
        if (minute < latest[i]) {
            latest[i] = minute;
            changed = true;
        }
        return earliest[i] <= latest[i];
    }

    /** Whether a window got smaller since this was asked last. */
    boolean takeChanged() {
        boolean was = changed;
        changed = false;
        return was;
    }

    int[] starts() {
        return earliest.clone();
    }
}
