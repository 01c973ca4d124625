package batchwright.audit.proof;

import batchwright.audit.proof.ProofModel.AtLeast;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Narrows the bounds of columns by the rows, one row at a time: what the other columns can give at most, a column must make up for. What
 * is counted is rounded to whole numbers inwards, all else outwards, so no point that keeps the rows is lost. Exact: a row whose sums
 * could overflow is left out.
 */
final class Narrowing {
    private static final int MOST_ROUNDS = 8;
    private static final long LARGEST = Long.MAX_VALUE / 4;

    private final boolean[] whole;
    private final int[][] columns;
    private final long[][] coefficients;
    private final long[] least;
    private final List<List<Integer>> rowsOf = new ArrayList<>();

    Narrowing(ProofModel model) {
        List<AtLeast> rows =
                model.rows().stream().filter(row -> isSmall(model, row)).toList();
        whole = new boolean[model.columns().size()];
        for (int j = 0; j < whole.length; j++) {
            whole[j] = model.columns().get(j).whole();
            rowsOf.add(new ArrayList<>());
        }
        columns = new int[rows.size()][];
        coefficients = new long[rows.size()][];
        least = new long[rows.size()];
        for (int i = 0; i < rows.size(); i++) {
            columns[i] =
                    rows.get(i).columns().stream().mapToInt(Integer::intValue).toArray();
            coefficients[i] = rows.get(i).coefficients().stream()
                    .mapToLong(Long::longValue)
                    .toArray();
            least[i] = rows.get(i).least();
            for (int j : columns[i]) {
                rowsOf.get(j).add(i);
            }
        }
    }

    /** Sums of amounts within the bounds of the model, which only get narrower, cannot overflow. */
    private static boolean isSmall(ProofModel model, AtLeast row) {
        double sum = Math.abs((double) row.least());
        for (int k = 0; k < row.columns().size(); k++) {
            sum += Math.abs((double) row.coefficients().get(k))
                    * model.columns().get(row.columns().get(k)).most();
        }
        return sum < LARGEST;
    }

    /**
     * @param low of each column; raised
     * @param high of each column; lowered
     * @return false when no point keeps the rows
     */
    boolean narrow(long[] low, long[] high) {
        Set<Integer> next = new HashSet<>();
        for (int i = 0; i < columns.length; i++) {
            next.add(i);
        }
        for (int round = 0; round < MOST_ROUNDS && !next.isEmpty(); round++) {
            Set<Integer> changed = new HashSet<>();
            for (int i = 0; i < columns.length; i++) {
                if (next.contains(i) && !narrow(i, low, high, changed)) {
                    return false;
                }
            }
            next.clear();
            changed.forEach(j -> next.addAll(rowsOf.get(j)));
        }
        return true;
    }

    private boolean narrow(int i, long[] low, long[] high, Set<Integer> changed) {
        long most = 0;
        for (int k = 0; k < columns[i].length; k++) {
            most += gives(coefficients[i][k], low[columns[i][k]], high[columns[i][k]]);
        }
        if (most < least[i]) {
            return false;
        }
        for (int k = 0; k < columns[i].length; k++) {
            int j = columns[i][k];
            long a = coefficients[i][k];
            long mustGive = least[i] - (most - gives(a, low[j], high[j]));
            if (a > 0) {
                long to = whole[j] ? -Math.floorDiv(-mustGive, a) : Math.floorDiv(mustGive, a);
                if (to > low[j]) {
                    low[j] = to;
                    changed.add(j);
                }
            } else if (a < 0) {
                long to = whole[j] ? Math.floorDiv(mustGive, a) : -Math.floorDiv(-mustGive, a);
                if (to < high[j]) {
                    high[j] = to;
                    changed.add(j);
                }
            }
            if (low[j] > high[j]) {
                return false;
            }
        }
        return true;
    }

    /** At most. */
    private static long gives(long coefficient, long low, long high) {
        return coefficient * (coefficient > 0 ? high : low);
    }
}
