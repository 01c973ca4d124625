package batchwright.solve;

import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.Stop;
import java.util.function.LongPredicate;

/** The work that a search has done, and when that is enough. Once it is, it stays so. */
final class Meter implements Stop {
    /** Work done between two looks at whether it is enough: less than a millisecond. */
    static final long BETWEEN_LOOKS = 200_000;

    private final LongPredicate enough;
    private long work;
    private long nextLook;
    private boolean over;

    /** @param enough told the work done so far, about how many numbers were looked at */
    Meter(LongPredicate enough) {
        this.enough = enough;
    }

    /** @throws OutOfTime when it is enough */
    @Override
    public void spend(long more) {
        work += more;
        if (over || (work >= nextLook && isOver())) {
            throw new OutOfTime();
        }
    }

    @Override
    public boolean requested() {
        return isOver();
    }

    @Override
    public boolean urgent() {
        return isOver();
    }

    private boolean isOver() {
        nextLook = work + BETWEEN_LOOKS;
        over = over || enough.test(work);
        return over;
    }

    /** About how many numbers were looked at so far. */
    long work() {
        return work;
    }
}
