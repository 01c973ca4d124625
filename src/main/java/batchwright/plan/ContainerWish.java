package batchwright.plan;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * What each container of a dish must hold.
 *
 * @param proteinLeastG at least so much protein [g]
 * @param fatMostG at most so much fat [g]
 * @param with names of optional parts that must be in
 * @param without names of optional parts that must be left out
 */
public record ContainerWish(
        Optional<EnergyBand> energy,
        Optional<BigDecimal> proteinLeastG,
        Optional<BigDecimal> fatMostG,
        Set<String> with,
        Set<String> without) {
    public static final ContainerWish NONE =
            new ContainerWish(Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Set.of());

    public ContainerWish {
        with = Set.copyOf(with);
        without = Set.copyOf(without);
    }

    public ContainerWish withEnergy(Optional<EnergyBand> other) {
        return new ContainerWish(other, proteinLeastG, fatMostG, with, without);
    }

    public ContainerWish withProtein(Optional<BigDecimal> least) {
        return new ContainerWish(energy, least, fatMostG, with, without);
    }

    public ContainerWish withFat(Optional<BigDecimal> most) {
        return new ContainerWish(energy, proteinLeastG, most, with, without);
    }

    public ContainerWish withParts(Set<String> in, Set<String> out) {
        return new ContainerWish(energy, proteinLeastG, fatMostG, in, out);
    }
}
