package batchwright.explain.cost;

import java.util.Optional;

/**
 * How much protein a sum of money buys, as a change of every eater's floor [g a day].
 *
 * @param atLeast a plan with so much is known; empty when none is, however low the floor
 * @param atMost it is proven that no plan has more; empty when it is proven that no plan costs so little, however low the floor
 * @param highest whether {@code atMost} is only the highest floor that is asked for
 */
public record ProteinReach(Optional<Integer> atLeast, Optional<Integer> atMost, boolean highest) {
    public boolean proven() {
        return atLeast.equals(atMost);
    }
}
