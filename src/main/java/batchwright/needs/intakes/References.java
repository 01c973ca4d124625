package batchwright.needs.intakes;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.needs.evidence.Citation;
import batchwright.needs.target.Guides;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.HealthEffect;
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
    private static final Set<Nutrient> LEFT_OUT =
            EnumSet.of(Nutrient.FOLATE, Nutrient.WATER, Nutrient.FRUIT_VEG, Nutrient.COOKED_WEIGHT, Nutrient.VOLUME);
    private static final Citation TARGET = new Citation("the target");

    private References() {}

    /** In the order of {@link Nutrient}, each once; nothing by sex and age where a health answer makes other amounts apply. */
    public static List<Reference> of(Eater eater, DayTarget target, Guides guides) {
        Optional<Body> body =
                Optional.of(eater.body()).filter(b -> !eater.health().has(HealthEffect.OTHER_AMOUNTS));
        return EnumSet.complementOf(EnumSet.copyOf(LEFT_OUT)).stream()
                .map(nutrient -> of(nutrient, body, target, guides))
                .toList();
    }

    /** Where the target says nothing, what is published does; a floor of nothing says nothing. */
    private static Reference of(Nutrient nutrient, Optional<Body> body, DayTarget target, Guides guides) {
        Optional<Range> day = target.limit(Scope.DAY, nutrient).map(limit -> limit.range());
        Reference published = published(nutrient, body, guides);
        Optional<Recommended> least = day.filter(Range::hasLeast)
                .map(range -> new Recommended(Kind.TARGET, BigDecimal.valueOf(range.least()), TARGET));
        Optional<Ceiling> most = day.filter(range -> range.most().isPresent())
                .map(range -> limit(Kind.TARGET, range.most().getAsInt(), TARGET));
        return new Reference(nutrient, least.or(published::recommended), most.or(published::limit));
    }

    private static Reference published(Nutrient nutrient, Optional<Body> body, Guides guides) {
        return nutrient == Nutrient.SATURATED_FAT
                ? new Reference(
                        nutrient,
                        Optional.empty(),
                        Optional.of(limit(Kind.GUIDE, guides.saturatedFatMostG(), Guides.SATURATED_FAT)))
                : new Reference(
                        nutrient,
                        body.flatMap(b -> DietaryReferenceIntakes.recommended(nutrient, b)),
                        body.flatMap(b -> DietaryReferenceIntakes.limit(nutrient, b)));
    }

    private static Ceiling limit(Kind kind, int amount, Citation source) {
        return new Ceiling(kind, BigDecimal.valueOf(amount), Counts.EVERYTHING, source);
    }
}
