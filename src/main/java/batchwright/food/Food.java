package batchwright.food;

import batchwright.food.origin.Origins;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * One row of the catalogue.
 *
 * @param id short name used in the files, such as rolled_oats
 * @param name what a cook would say
 * @param group part of the shop or the kitchen it belongs to, such as grain
 * @param ndb number in USDA SR28, if the values come from there
 * @param description the source's own description
 * @param per100g nutrients per 100 g edible
 * @param refusePercent share of the weight as purchased that is thrown away (peel, bone, shell), 0 to below 100
 * @param allergens those known; labels decide
 * @param perishable a remainder would spoil within about two weeks
 * @param origins what it is made of, as far as diets ask
 * @param takenOff what the refuse is; empty when that is not said, or nothing is thrown away
 */
public record Food(
        String id,
        String name,
        String group,
        Optional<String> ndb,
        String description,
        Nutrients per100g,
        BigDecimal refusePercent,
        Set<Allergen> allergens,
        boolean perishable,
        Origins origins,
        Set<TakenOff> takenOff) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** A food of which neither origins nor the kind of refuse are said. */
    public Food(
            String id,
            String name,
            String group,
            Optional<String> ndb,
            String description,
            Nutrients per100g,
            BigDecimal refusePercent,
            Set<Allergen> allergens,
            boolean perishable) {
        this(
                id,
                name,
                group,
                ndb,
                description,
                per100g,
                refusePercent,
                allergens,
                perishable,
                Origins.UNKNOWN,
                Set.of());
    }

    /** Share of the weight as purchased that can be eaten, above 0 and at most 1. */
    public BigDecimal edibleShare() {
        return HUNDRED.subtract(refusePercent).divide(HUNDRED);
    }

    /** Two foods are the same when they have the same id: the catalogue holds an id once. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Food that && id.equals(that.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return id;
    }
}
