package batchwright.solve.mip;

/** What moving a column up or down to a whole number has cost so far, per unit moved. */
final class PseudoCosts {
    private static final double LEAST = 1e-6;

    private final double[][] sum;
    private final int[][] count;

    PseudoCosts(int columns) {
        sum = new double[2][columns];
        count = new int[2][columns];
    }

    /**
     * @param up whether the column was moved up
     * @param distance how far it had to move
     * @param gain by how much the bound rose
     */
    void learn(int column, boolean up, double distance, double gain) {
        int side = up ? 1 : 0;
        sum[side][column] += gain / Math.max(distance, LEAST);
        count[side][column]++;
    }

    /** How often the rarer side was tried. */
    int seen(int column) {
        return Math.min(count[0][column], count[1][column]);
    }

    /** Product of the two expected gains: a column is good to branch on when both sides raise the bound. */
    double score(int column, double fraction) {
        return score(expected(0, column) * fraction, expected(1, column) * (1 - fraction));
    }

    static double score(double down, double up) {
        return Math.max(down, LEAST) * Math.max(up, LEAST);
    }

    private double expected(int side, int column) {
        if (count[side][column] > 0) {
            return sum[side][column] / count[side][column];
        }
        double all = 0;
        int seen = 0;
        for (int j = 0; j < count[side].length; j++) {
            all += sum[side][j];
            seen += count[side][j];
        }
        return seen > 0 ? all / seen : 1;
    }
}
