package batchwright.plan;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What each container of a dish shall hold.
 *
 * @param proteinLeastG at least so much protein [g]
 * @param fatMostG at most so much fat [g]
 */
public record ContainerWish(
        Optional<EnergyBand> energy, Optional<BigDecimal> proteinLeastG, Optional<BigDecimal> fatMostG) {
    public static final ContainerWish NONE = new ContainerWish(Optional.empty(), Optional.empty(), Optional.empty());

    public ContainerWish withEnergy(Optional<EnergyBand> other) {
        return new ContainerWish(other, proteinLeastG, fatMostG);
    }

    public ContainerWish withProtein(Optional<BigDecimal> least) {
        return new ContainerWish(energy, least, fatMostG);
    }

    public ContainerWish withFat(Optional<BigDecimal> most) {
        return new ContainerWish(energy, proteinLeastG, most);
    }
}
