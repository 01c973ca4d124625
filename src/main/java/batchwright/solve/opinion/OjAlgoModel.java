package batchwright.solve.opinion;

import batchwright.solve.mip.Column;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.Row;
import java.time.Duration;
import java.util.List;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.ModelEntity;
import org.ojalgo.optimisation.Optimisation;

/**
 * One of our models as one of ojAlgo's: the same columns and rows. What ojAlgo answers is taken as a hint only: points are rounded and
 * held against every row of our model, multipliers are made a bound by {@link WeakDuality}.
 */
final class OjAlgoModel {
    /** A checked point may miss a row by so much, as a share of large numbers. */
    private static final double TOLERANCE = 1e-6;

    private static final String ROW = "r";
    private final MipModel ours;
    private final ExpressionsBasedModel theirs = new ExpressionsBasedModel();

    /** What ojAlgo says; its word alone proves nothing. */
    enum Says {
        OPTIMAL,
        IMPOSSIBLE,
        UNDECIDED
    }

    OjAlgoModel(MipModel ours) {
        this.ours = ours;
        double[] costs = ours.costs();
        for (Column column : ours.columns()) {
            var variable = theirs.newVariable("c" + column.index()).integer(column.whole());
            limit(variable, column.lower(), column.upper());
            if (costs[column.index()] != 0) {
                variable.weight(costs[column.index()]);
            }
        }
        List<Row> rows = ours.rows();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            var expression = theirs.newExpression(ROW + i);
            limit(expression, row.lower(), row.upper());
            for (int k = 0; k < row.columns().length; k++) {
                expression.set(row.columns()[k], row.coefficients()[k]);
            }
        }
    }

    private static void limit(ModelEntity<?> entity, double lower, double upper) {
        if (lower > Double.NEGATIVE_INFINITY) {
            entity.lower(lower);
        }
        if (upper < Double.POSITIVE_INFINITY) {
            entity.upper(upper);
        }
    }

    /**
     * What came out.
     *
     * @param values of our columns, those that are whole rounded
     * @param multipliers one for each of our rows; 0 where ojAlgo gives none
     */
    record Answer(Says says, double[] values, double[] multipliers) {}

    /** With every whole-numbered column whole. */
    Answer solve(Duration within) {
        return answer(within);
    }

    /** With none of them whole. */
    Answer relaxation(Duration within) {
        theirs.relax();
        return answer(within);
    }

    private Answer answer(Duration within) {
        theirs.options.time_abort = Math.max(1, within.toMillis());
        theirs.options.time_suffice = theirs.options.time_abort;
        Optimisation.Result result = theirs.minimise();
        return new Answer(says(result.getState()), values(result), multipliers(result));
    }

    private static Says says(Optimisation.State state) {
        return switch (state) {
            case OPTIMAL, DISTINCT -> Says.OPTIMAL;
            case INFEASIBLE -> Says.IMPOSSIBLE;
            default -> Says.UNDECIDED;
        };
    }

    private double[] values(Optimisation.Result result) {
        double[] values = new double[ours.columns().size()];
        for (Column column : ours.columns()) {
            if (column.index() < result.size()) {
                double value = result.doubleValue(column.index());
                values[column.index()] = column.whole() ? Math.rint(value) : value;
            }
        }
        return values;
    }

    private double[] multipliers(Optimisation.Result result) {
        double[] multipliers = new double[ours.rowCount()];
        for (var pair : result.getDualValues()) {
            String name = pair.getKey().left().getName();
            if (name.startsWith(ROW)) {
                multipliers[Integer.parseInt(name.substring(ROW.length()))] +=
                        signed(pair.getKey().right(), pair.doubleValue());
            }
        }
        return multipliers;
    }

    /** Of a minimum: a lower limit can only raise it, an upper one only lower it; an equation either. */
    private static double signed(Optimisation.ConstraintType type, double multiplier) {
        return switch (type) {
            case LOWER -> Math.abs(multiplier);
            case UPPER -> -Math.abs(multiplier);
            default -> multiplier;
        };
    }

    /** Whether these values keep every bound and row of ours. */
    boolean keepsEveryRow(double[] values) {
        return ours.brokenBy(values, TOLERANCE).isEmpty();
    }
}
