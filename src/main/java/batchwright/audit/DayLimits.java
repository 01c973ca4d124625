package batchwright.audit;

import batchwright.food.Nutrient;
import batchwright.person.DayTarget;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

/** Each day of each eater holds what its target says of one nutrient. */
record DayLimits(String name, Function<DayTarget, Limits> limits) implements Inspection {
    static final List<Inspection> ALL = List.of(
            new DayLimits(
                    "energy band",
                    t -> new Limits(Nutrient.ENERGY, t.energyLeastKcal(), OptionalInt.of(t.energyMostKcal()))),
            new DayLimits("protein floor", t -> new Limits(Nutrient.PROTEIN, t.proteinLeastG(), OptionalInt.empty())),
            new DayLimits("fat band", t -> new Limits(Nutrient.FAT, t.fatLeastG(), OptionalInt.of(t.fatMostG()))),
            new DayLimits("fibre floor", t -> new Limits(Nutrient.FIBRE, t.fibreLeastG(), OptionalInt.empty())),
            new DayLimits(
                    "fruit and vegetables",
                    t -> new Limits(Nutrient.FRUIT_VEG, t.fruitVegLeastG(), OptionalInt.empty())));

    @Override
    public void inspect(Evidence evidence, Findings findings) {
        evidence.days((seat, day) -> limits.apply(seat.target())
                .check(Say.day(seat, day), evidence.eaten().onDay(seat.eater(), day), findings));
    }
}
