package batchwright.food;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A recipe made of parts.
 *
 * @param fridgeDays days a container keeps in the fridge, the cooking day being day 1
 * @param freezes whether a container may be frozen on the cooking day and eaten later
 * @param reheat how to reheat, in one sentence
 * @param staples always at home; their allergens count like those of foods
 * @param swaps what is not as in its file: none in a dish as it is written
 */
public record Dish(
        String id,
        String name,
        Kind kind,
        int fridgeDays,
        boolean freezes,
        String reheat,
        List<Part> parts,
        List<Staple> staples,
        List<Step> steps,
        List<Swap> swaps) {
    /** Published home advice for cooked food: 3 to 4 days (USDA FSIS, read in a secondary source); the trade's five are common practice. */
    public static final int ADVISED_FRIDGE_DAYS = 4;

    /** When it is mostly eaten. */
    public enum Kind {
        BREAKFAST,
        LUNCH,
        DINNER,
        /** At lunch or dinner. */
        MAIN
    }

    public Dish {
        parts = List.copyOf(parts);
        staples = List.copyOf(staples);
        steps = List.copyOf(steps);
        swaps = List.copyOf(swaps);
    }

    /** As it is written. */
    public Dish(
            String id,
            String name,
            Kind kind,
            int fridgeDays,
            boolean freezes,
            String reheat,
            List<Part> parts,
            List<Staple> staples,
            List<Step> steps) {
        this(id, name, kind, fridgeDays, freezes, reheat, parts, staples, steps, List.of());
    }

    /** Whether a container may be planned for this day of the plan (1 is the cooking day). */
    public boolean keepsUntil(int day) {
        return freezes || day <= fridgeDays;
    }

    public Set<Food> foods() {
        var foods = new LinkedHashSet<Food>();
        parts.forEach(part -> part.mix().forEach(i -> foods.add(i.food())));
        return foods;
    }

    /** The known ones of its foods and staples. */
    public Set<Allergen> allergens() {
        var all = EnumSet.noneOf(Allergen.class);
        foods().forEach(food -> all.addAll(food.allergens()));
        staples.forEach(staple -> all.addAll(staple.allergens()));
        return all;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Dish that && id.equals(that.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }
}
