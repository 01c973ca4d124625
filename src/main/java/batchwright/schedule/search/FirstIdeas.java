package batchwright.schedule.search;

import java.util.Random;

/** Good timetables found quickly: by rules of thumb, then by small changes of the order. */
final class FirstIdeas {
    private static final int CHANGES = 300;
    private static final long SEED = 1;
    private final Project project;
    private final InOrder inOrder;
    private int[] best;
    private double[] bestKey;
    private int end;

    FirstIdeas(Project project, Conflicts conflicts) {
        this.project = project;
        this.inOrder = new InOrder(project, conflicts);
        this.bestKey = new double[project.size()];
        this.best = inOrder.place(bestKey);
        this.end = project.end(best);
    }

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

    /** Swaps two places in the order, again and again, and keeps what is not worse; until an end is reached. */
    void swap(int enough) {
        var random = new Random(SEED); // its numbers are laid down by the language: the same everywhere
        for (int change = 0; change < CHANGES && end > enough; change++) {
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
        int[] starts = inOrder.place(key);
        int itsEnd = project.end(starts);
        if (itsEnd <= end) {
            best = starts;
            bestKey = key;
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
