package batchwright.solve.snack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * Tells when to turn back: the pieces chosen and the least still to come would rank no better than the best so far, or
 * would have too much energy, or cost too much.
 */
final class Bounds {
    private final Window window;
    private final List<LeastTable> rank;
    private final List<LeastTable> energy;
    private final List<LeastTable> cost;

    Bounds(List<Piece> pieces, Window window, Ranking ranking) {
        this.window = window;
        List<Demand> demands = Demand.of(window, pieces, LeastTable.mostSteps(pieces, window.kindsMost()));
        rank = tables(demands, pieces, ranking::rank);
        energy = window.energyMost() < Window.NO_LIMIT ? tables(demands, pieces, Piece::energy) : List.of();
        cost = window.costMost() < Window.NO_LIMIT ? tables(demands, pieces, Piece::cost) : List.of();
    }

    private List<LeastTable> tables(List<Demand> demands, List<Piece> pieces, ToLongFunction<Piece> figure) {
        List<LeastTable> tables = new ArrayList<>();
        for (Demand demand : demands) {
            tables.add(new LeastTable(pieces, demand, figure, window.kindsMost()));
        }
        return tables;
    }

    /** Whether no choice of the pieces from this one on makes the chosen ones a snack that ranks below the limit. */
    boolean hopeless(Chosen chosen, int from, long rankLimit) {
        return reaches(rankLimit, chosen.rank(), rank, chosen, from)
                || reaches(window.energyMost() + 1, chosen.energy(), energy, chosen, from)
                || reaches(window.costMost() + 1, chosen.cost(), cost, chosen, from);
    }

    private boolean reaches(long limit, long soFar, List<LeastTable> tables, Chosen chosen, int from) {
        int kindsLeft = window.kindsMost() - chosen.kinds();
        long energyLeft = window.energyLeast() - chosen.energy();
        long proteinLeft = window.proteinLeast() - chosen.protein();
        for (LeastTable table : tables) {
            if (soFar + table.least(from, kindsLeft, energyLeft, proteinLeft) >= limit) {
                return true;
            }
        }
        return false;
    }
}
