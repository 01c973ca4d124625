package batchwright.needs.intakes;

import batchwright.food.Nutrient;
import batchwright.needs.evidence.Citation;
import batchwright.needs.target.Guides;
import batchwright.person.Body;
import batchwright.person.DayTarget;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a day of an eater is compared with, nutrient by nutrient: the target, guides by energy, and the table of
 * {@link DietaryReferenceIntakes}. Total folate is left out, because recommendations count folate equivalents.
 */
public final class References {
    private static final Set<Nutrient> LEFT_OUT = EnumSet.of(Nutrient.FOLATE, Nutrient.WATER, Nutrient.FRUIT_VEG);
    private static final Citation TARGET = new Citation("the target");

    private References() {}

    /** In the order of {@link Nutrient}, each once. */
    public static List<Reference> of(Body body, DayTarget target, Guides guides) {
        return EnumSet.complementOf(EnumSet.copyOf(LEFT_OUT)).stream()
                .map(nutrient -> of(nutrient, body, target, guides))
                .toList();
    }

    private static Reference of(Nutrient nutrient, Body body, DayTarget target, Guides guides) {
        return switch (nutrient) {
            case ENERGY -> target(nutrient, target.energyLeastKcal(), Optional.of(target.energyMostKcal()));
            case PROTEIN -> target(nutrient, target.proteinLeastG(), Optional.empty());
            case FAT -> target(nutrient, target.fatLeastG(), Optional.of(target.fatMostG()));
            case FIBRE -> target(nutrient, target.fibreLeastG(), Optional.empty());
            case SATURATED_FAT ->
                new Reference(
                        nutrient,
                        Optional.empty(),
                        Optional.of(limit(Kind.GUIDE, guides.saturatedFatMostG(), Guides.SATURATED_FAT)));
            default ->
                new Reference(
                        nutrient,
                        DietaryReferenceIntakes.recommended(nutrient, body),
                        DietaryReferenceIntakes.limit(nutrient, body));
        };
    }

    private static Reference target(Nutrient nutrient, int least, Optional<Integer> most) {
        return new Reference(
                nutrient,
                Optional.of(new Recommended(Kind.TARGET, BigDecimal.valueOf(least), TARGET)),
                most.map(amount -> limit(Kind.TARGET, amount, TARGET)));
    }

    private static Limit limit(Kind kind, int amount, Citation source) {
        return new Limit(kind, BigDecimal.valueOf(amount), Counts.EVERYTHING, source);
    }
}
