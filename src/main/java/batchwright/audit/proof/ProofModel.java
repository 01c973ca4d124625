package batchwright.audit.proof;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Columns, none of which is below 0, and rows that they must reach, in whole numbers. An amount that has more than {@link #DECIMALS}
 * decimals is rounded to the side on which the row asks for less, so that what is proven of these rows holds for the amounts as they are.
 */
public final class ProofModel {
    /** Of the coefficients and the least of a row. */
    public static final int DECIMALS = 9;

    private final List<Variable> columns = new ArrayList<>();
    private final List<AtLeast> rows = new ArrayList<>();
    private final Map<String, Integer> columnByName = new HashMap<>();
    private final Map<String, Integer> rowByName = new HashMap<>();
    private @Nullable Narrowing narrowing;

    /**
     * Something to be decided.
     *
     * @param least at least 0
     * @param whole whether it is counted
     * @param cost of one [minor units]
     */
    public record Variable(String name, long least, long most, boolean whole, long cost) {}

    /**
     * The sum of coefficients x columns is at least so much; both in units of 10 to the minus {@link #DECIMALS}.
     *
     * @param columns their places
     */
    public record AtLeast(String name, List<Integer> columns, List<Long> coefficients, long least) {}

    /** The place of a new column. */
    int column(String name, long least, long most, boolean whole, long cost) {
        if (least < 0 || cost < 0) {
            throw new IllegalArgumentException("least (" + least + ") and cost (" + cost + ") must be at least 0.");
        }
        columns.add(new Variable(name, least, most, whole, cost));
        if (columnByName.put(name, columns.size() - 1) != null) {
            throw new IllegalArgumentException("name (" + name + ") must be new.");
        }
        return columns.size() - 1;
    }

    /** A row that is being put together. */
    final class Sum {
        private final List<Integer> places = new ArrayList<>();
        private final List<BigDecimal> amounts = new ArrayList<>();

        Sum plus(int column, BigDecimal amount) {
            if (amount.signum() != 0) {
                places.add(column);
                amounts.add(amount);
            }
            return this;
        }

        Sum plus(int column, long amount) {
            return plus(column, BigDecimal.valueOf(amount));
        }

        boolean isEmpty() {
            return places.isEmpty();
        }

        void atLeast(String name, BigDecimal least) {
            var coefficients = new ArrayList<Long>();
            for (BigDecimal amount : amounts) {
                coefficients.add(inUnits(amount, RoundingMode.CEILING));
            }
            rows.add(new AtLeast(name, List.copyOf(places), coefficients, inUnits(least, RoundingMode.FLOOR)));
            if (rowByName.put(name, rows.size() - 1) != null) {
                throw new IllegalArgumentException("name (" + name + ") must be new.");
            }
        }

        void atLeast(String name, long least) {
            atLeast(name, BigDecimal.valueOf(least));
        }

        void atMost(String name, BigDecimal most) {
            amounts.replaceAll(BigDecimal::negate);
            atLeast(name, most.negate());
            amounts.replaceAll(BigDecimal::negate);
        }

        void atMost(String name, long most) {
            atMost(name, BigDecimal.valueOf(most));
        }

        /** The most that it can be within the bounds of its columns; they must all add to it. */
        BigDecimal most() {
            BigDecimal most = BigDecimal.ZERO;
            for (int k = 0; k < places.size(); k++) {
                most = most.add(amounts.get(k)
                        .multiply(BigDecimal.valueOf(columns.get(places.get(k)).most())));
            }
            return most;
        }

        Sum plus(Sum other, int times) {
            for (int k = 0; k < other.places.size(); k++) {
                plus(other.places.get(k), other.amounts.get(k).multiply(BigDecimal.valueOf(times)));
            }
            return this;
        }
    }

    private static long inUnits(BigDecimal amount, RoundingMode side) {
        return amount.setScale(DECIMALS, side).unscaledValue().longValueExact();
    }

    public List<Variable> columns() {
        return Collections.unmodifiableList(columns);
    }

    public List<AtLeast> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** The place of a column; -1 when there is none of this name. */
    int column(String name) {
        return columnByName.getOrDefault(name, -1);
    }

    /** The place of a row; -1 when there is none of this name. */
    int row(String name) {
        return rowByName.getOrDefault(name, -1);
    }

    /**
     * Narrows bounds by the rows, without losing a point that keeps them.
     *
     * @param least of each column; raised
     * @param most of each column; lowered
     * @return false when there is no such point
     */
    public boolean narrow(long[] least, long[] most) {
        Narrowing known = narrowing;
        if (known == null) {
            known = new Narrowing(this);
            narrowing = known;
        }
        return known.narrow(least, most);
    }

    /**
     * What multipliers prove by weak duality, rounded up to whole cents, as costs are whole cents: the cost is at least the sum of
     * multiplier x least of each row, and of the least that (cost - multipliers x coefficients) x column can be.
     *
     * @param multipliers by the name of the row, none below 0
     * @param least of each column
     * @param most of each column
     */
    public BigInteger bound(Map<String, BigDecimal> multipliers, long[] least, long[] most) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal[] reduced = columns.stream()
                .map(c -> BigDecimal.valueOf(c.cost()).movePointRight(DECIMALS))
                .toArray(BigDecimal[]::new);
        for (var entry : multipliers.entrySet()) {
            AtLeast row = rows.get(row(entry.getKey()));
            sum = sum.add(entry.getValue().multiply(BigDecimal.valueOf(row.least())));
            for (int k = 0; k < row.columns().size(); k++) {
                int j = row.columns().get(k);
                reduced[j] = reduced[j].subtract(entry.getValue()
                        .multiply(BigDecimal.valueOf(row.coefficients().get(k))));
            }
        }
        for (int j = 0; j < reduced.length; j++) {
            long at = reduced[j].signum() > 0 ? least[j] : most[j];
            sum = sum.add(reduced[j].multiply(BigDecimal.valueOf(at)));
        }
        return sum.movePointLeft(DECIMALS).setScale(0, RoundingMode.CEILING).toBigInteger();
    }
}
