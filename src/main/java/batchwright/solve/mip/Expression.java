package batchwright.solve.mip;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ObjDoubleConsumer;

/** A linear expression: a constant plus multiples of columns. Grows by {@code plus}; never shared while it grows. */
public final class Expression {
    private final Map<Column, Double> terms = new LinkedHashMap<>();
    private double constant;

    public static Expression of(double constant) {
        return new Expression().plus(constant);
    }

    public static Expression of(Column column) {
        return new Expression().plus(column, 1);
    }

    public Expression plus(double more) {
        constant += more;
        return this;
    }

    public Expression plus(Column column, double factor) {
        if (factor != 0) {
            terms.merge(column, factor, Double::sum);
        }
        return this;
    }

    public Expression plus(Expression other, double factor) {
        constant += factor * other.constant;
        other.terms.forEach((column, coefficient) -> plus(column, factor * coefficient));
        return this;
    }

    int size() {
        return terms.size();
    }

    public double constant() {
        return constant;
    }

    public void forEach(ObjDoubleConsumer<Column> action) {
        terms.forEach((column, coefficient) -> {
            if (coefficient != 0) {
                action.accept(column, coefficient);
            }
        });
    }

    public double value(double[] values) {
        double sum = constant;
        for (var term : terms.entrySet()) {
            sum += term.getValue() * values[term.getKey().index()];
        }
        return sum;
    }

    /** The largest value within the columns' own bounds. */
    public double most() {
        double sum = constant;
        for (var term : terms.entrySet()) {
            double factor = term.getValue();
            sum += factor * (factor > 0 ? term.getKey().upper() : term.getKey().lower());
        }
        return sum;
    }
}
