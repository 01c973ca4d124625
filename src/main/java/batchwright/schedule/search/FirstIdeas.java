package batchwright.schedule.search;

import java.util.Random;

/** Good timetables found quickly: by rules of thumb, then by small changes of the order. */
final class FirstIdeas {
    private static final int CHANGES = 300;
    private static final long SEED = 1;
    private final Project project;
    private final Within within;
    private final Later later;
    private final InOrder inOrder;
    private int[] best;
    private double[] bestKey;
    private int broken;
    private int end;

    FirstIdeas(Project project, Conflicts conflicts, Within within) {
        this.project = project;
        this.within = within;
        this.later = new Later(project, conflicts, within);
        this.inOrder = new InOrder(project, conflicts);
        this.bestKey = new double[project.size()];
        this.best = placed(bestKey);
        this.broken = within.broken(best);
        this.end = project.end(best);
    }

    private int[] placed(double[] key) {
        int[] starts = inOrder.place(key);
        return within.isEmpty() ? starts : later.moved(starts);
    }

    /** Where every timetable that was found lets something stand too long, the one that does so least. */
    int[] best() {
        return best;
    }

    /** The best of some rules of thumb. */
    void rulesOfThumb() {
        double[] tails = tails();
        var longestTail = new double[tails.length];
        var latestStart = new double[tails.length];
        for (int i = 0; i < tails.length; i++) {
            longestTail[i] = -tails[i];
            latestStart[i] = -tails[i] - project.activities().get(i).minutes();
        }
        consider(longestTail);
        consider(latestStart);
    }

    /** Swaps two places in the order, again and again, and keeps what is not worse; until an end is reached and nothing stands. */
    void swap(int enough) {
        var random = new Random(SEED); // its numbers are laid down by the language: the same everywhere
        for (int change = 0; change < CHANGES && (end > enough || broken > 0); change++) {
            double[] key = bestKey.clone();
            int one = random.nextInt(key.length);
            int other = random.nextInt(key.length);
            double swap = key[one];
            key[one] = key[other];
            key[other] = swap;
            consider(key);
        }
    }

    private void consider(double[] key) {
        int[] starts = placed(key);
        int itsEnd = project.end(starts);
        int itsBroken = within.broken(starts);
        if (itsBroken < broken || (itsBroken == broken && itsEnd <= end)) {
            best = starts;
            bestKey = key;
            broken = itsBroken;
            end = itsEnd;
        }
    }

    /** Minutes of the longest chain that follows. */
    private double[] tails() {
        var tails = new double[project.size()];
        for (int i = project.size() - 1; i >= 0; i--) {
            for (int before : project.activities().get(i).after()) {
                tails[before] = Math.max(
                        tails[before], tails[i] + project.activities().get(i).minutes());
            }
        }
        return tails;
    }
}
