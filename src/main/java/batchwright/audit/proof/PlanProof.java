package batchwright.audit.proof;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Claims that no plan costs less than some sum, and says why. The idea is that of VIPR certificates (Cheung, Gleixner, Steffy: Verifying
 * Integer Programming Results, IPCO 2017): a branch tree, each leaf with the multipliers that close it.
 *
 * @param boundMinor no plan costs less [minor units]
 * @param parts together they hold every set of dishes that may be cooked
 */
public record PlanProof(long boundMinor, List<Part> parts) {
    public PlanProof {
        parts = List.copyOf(parts);
    }

    /**
     * All sets of dishes that have these dishes, and none but those.
     *
     * @param with ids of dishes that are in each of the sets
     * @param among ids of dishes that may be, those among them
     */
    public record Part(Set<String> with, Set<String> among, Tree tree) {
        public Part {
            with = Collections.unmodifiableSet(new LinkedHashSet<>(with));
            among = Collections.unmodifiableSet(new LinkedHashSet<>(among));
        }
    }

    /** Why nothing in a part costs less. */
    public sealed interface Tree {}

    /**
     * Rows, each times so much, add up to a bound.
     *
     * @param multipliers by the name of the row, none below 0 [minor units for each of the row's units]
     */
    public record Leaf(Map<String, BigDecimal> multipliers) implements Tree {
        public Leaf {
            multipliers = Collections.unmodifiableMap(new LinkedHashMap<>(multipliers));
        }
    }

    /**
     * What is counted in whole numbers is at most so much, or it is more.
     *
     * @param column its name
     * @param low where it is at most {@code at}
     * @param high where it is at least one more
     */
    public record Split(String column, long at, Tree low, Tree high) implements Tree {}
}
