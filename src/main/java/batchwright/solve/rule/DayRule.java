package batchwright.solve.rule;

import batchwright.food.Nutrient;
import batchwright.person.DayTarget;
import batchwright.plan.Seat;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** Each day of each eater holds at least and at most so much of one nutrient. One row for each span: units of the nutrient. */
public record DayRule(
        String name, Nutrient nutrient, ToDoubleFunction<DayTarget> least, ToDoubleFunction<DayTarget> most)
        implements Rule {
    public static final DayRule ENERGY_BAND =
            new DayRule("energy band", Nutrient.ENERGY, DayTarget::energyLeastKcal, DayTarget::energyMostKcal);
    public static final DayRule PROTEIN_FLOOR =
            new DayRule("protein floor", Nutrient.PROTEIN, DayTarget::proteinLeastG, t -> Double.POSITIVE_INFINITY);
    public static final DayRule FAT_BAND =
            new DayRule("fat band", Nutrient.FAT, DayTarget::fatLeastG, DayTarget::fatMostG);
    public static final DayRule FIBRE_FLOOR =
            new DayRule("fibre floor", Nutrient.FIBRE, DayTarget::fibreLeastG, t -> Double.POSITIVE_INFINITY);
    public static final DayRule FRUIT_AND_VEGETABLES = new DayRule(
            "fruit and vegetables", Nutrient.FRUIT_VEG, DayTarget::fruitVegLeastG, t -> Double.POSITIVE_INFINITY);

    /** All of them. */
    public static final List<DayRule> ALL =
            List.of(ENERGY_BAND, PROTEIN_FLOOR, FAT_BAND, FIBRE_FLOOR, FRUIT_AND_VEGETABLES);

    @Override
    public void addTo(Draft draft) {
        for (Seat seat : draft.request().seats()) {
            for (Draft.Span span : draft.spans(seat)) {
                draft.model()
                        .row(
                                nutrient.name().toLowerCase(Locale.ROOT) + "." + span.name(),
                                span.intake(nutrient),
                                least.applyAsDouble(seat.target()) * span.days(),
                                most.applyAsDouble(seat.target()) * span.days());
            }
        }
    }
}
