package batchwright.app.proof;

import batchwright.audit.proof.PlanProof;
import batchwright.audit.proof.ProofModel;
import batchwright.solve.mip.BoundTree;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.Stop;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/** The rows that the check builds, as a model that the search solves; what the search finds is judged by the rows themselves. */
record RowsToSolve(ProofModel rows) implements BoundTree.Judge {
    /** Of a multiplier. */
    private static final int DECIMALS = 9;

    double[] lower() {
        return rows.columns().stream().mapToDouble(ProofModel.Variable::least).toArray();
    }

    double[] upper() {
        return rows.columns().stream().mapToDouble(ProofModel.Variable::most).toArray();
    }

    /** In doubles. */
    MipModel model(Stop stop) {
        var model = new MipModel(stop);
        var cost = new Expression();
        double unit = Math.pow(10, -ProofModel.DECIMALS);
        for (ProofModel.Variable c : rows.columns()) {
            cost.plus(model.column(c.name(), (double) c.least(), (double) c.most(), c.whole(), 0), (double) c.cost());
        }
        for (ProofModel.AtLeast row : rows.rows()) {
            var sum = new Expression();
            for (int k = 0; k < row.columns().size(); k++) {
                sum.plus(
                        model.columns().get(row.columns().get(k)),
                        row.coefficients().get(k) * unit);
            }
            model.atLeast(row.name(), sum, row.least() * unit);
        }
        model.minimise(cost, 1);
        return model;
    }

    @Override
    public boolean narrow(double[] lower, double[] upper) {
        long[] least = longs(lower);
        long[] most = longs(upper);
        boolean some = rows.narrow(least, most);
        for (int j = 0; j < least.length; j++) {
            lower[j] = least[j];
            upper[j] = most[j];
        }
        return some;
    }

    @Override
    public long bound(double[] multipliers, double[] lower, double[] upper) {
        BigInteger proven = rows.bound(leaf(multipliers).multipliers(), longs(lower), longs(upper));
        return proven.min(BigInteger.valueOf(Long.MAX_VALUE))
                .max(BigInteger.valueOf(Long.MIN_VALUE))
                .longValueExact();
    }

    private static long[] longs(double[] bounds) {
        long[] longs = new long[bounds.length];
        for (int j = 0; j < longs.length; j++) {
            longs[j] = Math.round(bounds[j]);
        }
        return longs;
    }

    PlanProof.Tree tree(BoundTree.Tree grown) {
        if (grown instanceof BoundTree.Split split) {
            return new PlanProof.Split(split.column().name(), split.at(), tree(split.low()), tree(split.high()));
        }
        return leaf(((BoundTree.Leaf) grown).multipliers());
    }

    PlanProof.Leaf leaf(double[] multipliers) {
        Map<String, BigDecimal> byName = new LinkedHashMap<>();
        for (int i = 0; i < multipliers.length; i++) {
            BigDecimal multiplier = BigDecimal.valueOf(multipliers[i])
                    .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                    .stripTrailingZeros();
            if (multiplier.signum() > 0) {
                byName.put(rows.rows().get(i).name(), multiplier);
            }
        }
        return new PlanProof.Leaf(byName);
    }

    /** Of the columns whose names begin so, by what stands behind. */
    Map<String, Double> values(double[] values, String beginning) {
        Map<String, Double> found = new LinkedHashMap<>();
        for (int j = 0; j < values.length; j++) {
            String name = rows.columns().get(j).name();
            if (name.startsWith(beginning)) {
                found.put(name.substring(beginning.length()), values[j]);
            }
        }
        return found;
    }
}
