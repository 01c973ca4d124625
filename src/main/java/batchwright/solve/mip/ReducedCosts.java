package batchwright.solve.mip;

import batchwright.solve.mip.NodeQueue.Node;

/** Reduced-cost fixing: a whole column cannot move further off its bound than its reduced cost allows below the cutoff. */
final class ReducedCosts {
    private static final double ANYTHING = 1e15;
    private static final double NOTHING = 1e-9;

    private ReducedCosts() {}

    /**
     * Moves bounds of the node.
     *
     * @param cost of the relaxation
     * @param mostOfUse the most that a solution of use costs
     */
    static void tighten(Node node, MipModel model, double[] reduced, double cost, double mostOfUse) {
        double room = mostOfUse - cost;
        for (Column c : model.columns()) {
            int j = c.index();
            if (c.whole() && node.lower()[j] < node.upper()[j] && Math.abs(reduced[j]) > NOTHING) {
                double steps = Math.floor(room / Math.abs(reduced[j]) + Column.WHOLE);
                if (reduced[j] > 0) {
                    node.upper()[j] = Math.min(node.upper()[j], node.lower()[j] + steps);
                } else {
                    node.lower()[j] = Math.max(node.lower()[j], node.upper()[j] - steps);
                }
            }
        }
    }

    /** Whether there is so little room that it is worth a look. */
    static boolean isWorthIt(double cost, double mostOfUse) {
        return mostOfUse - cost < ANYTHING;
    }
}
