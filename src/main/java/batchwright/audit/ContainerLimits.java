package batchwright.audit;

import batchwright.food.Nutrient;
import batchwright.person.DayTarget;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** Each container holds what its eater's target says of one nutrient. */
record ContainerLimits(String name, Function<DayTarget, Limits> limits) implements Inspection {
    static final List<Inspection> ALL = List.of(
            new ContainerLimits(
                    "container share",
                    t -> new Limits(Nutrient.ENERGY, t.containerLeastKcal(), OptionalInt.of(t.containerMostKcal()))),
            new ContainerLimits(
                    "container protein",
                    t -> new Limits(Nutrient.PROTEIN, t.containerProteinLeastG(), OptionalInt.empty())));

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.fills((batch, fill) -> evidence.known()
                .seat(fill)
                .ifPresent(seat -> limits.apply(seat.target())
                        .check(
                                "a container of " + batch.dish().id() + " for "
                                        + seat.eater().name(),
                                evidence.eaten().inContainer(batch.dish(), fill),
                                findings)));
    }
}
