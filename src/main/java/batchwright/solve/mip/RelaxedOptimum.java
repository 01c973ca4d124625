package batchwright.solve.mip;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The optimum of a model when no column need be whole: soon known, and a hint at what is worth a look. */
public final class RelaxedOptimum {
    private final MipModel model;
    private final DualSimplex relaxation;

    /** @param stop told of all work */
    public RelaxedOptimum(MipModel model, Stop stop) {
        this.model = model;
        this.relaxation = new DualSimplex(model, stop);
    }

    /** Column values of a cheapest point in which these columns are at their lower bounds; empty when there is none. */
    public Optional<double[]> without(Collection<Column> columns) {
        double[] lower = model.columns().stream().mapToDouble(Column::lower).toArray();
        double[] upper = model.columns().stream().mapToDouble(Column::upper).toArray();
        columns.forEach(column -> upper[column.index()] = column.lower());
        return relaxation.solve(lower, upper) == Relaxation.Status.OPTIMAL
                ? Optional.of(relaxation.values())
                : Optional.empty();
    }

    /** Its cost; empty when there is none. */
    public OptionalDouble cost() {
        return without(List.of()).isPresent() ? OptionalDouble.of(relaxation.cost()) : OptionalDouble.empty();
    }
}
