package batchwright.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gives out burners or shelves by number, the lowest free ones first. Must be asked in the order of starts. */
final class Places {
    private final int[] freeFrom;

    Places(int number) {
        this.freeFrom = new int[number];
        Arrays.fill(freeFrom, 0);
    }

    /** Numbers from 1. */
    List<Integer> take(int number, int start, int end) {
        List<Integer> taken = new ArrayList<>();
        for (int place = 0; place < freeFrom.length && taken.size() < number; place++) {
            if (freeFrom[place] <= start) {
                freeFrom[place] = end;
                taken.add(place + 1);
            }
        }
        return taken;
    }
}
