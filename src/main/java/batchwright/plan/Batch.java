package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Part;
import batchwright.food.Step;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All containers of a dish that are cooked in the session. */
public record Batch(Dish dish, List<Fill> fills) {
    public Batch {
        fills = List.copyOf(fills);
    }

    public int containers() {
        return fills.stream().mapToInt(Fill::containers).sum();
    }

    /** Whether the step is done: one that is for parts that no container has falls away. */
    public boolean takes(Step step) {
        return step.parts().isEmpty() || step.parts().stream().anyMatch(this::has);
    }

    /** Whether some container has the part of this name. */
    private boolean has(String part) {
        return fills.stream()
                .flatMap(fill -> fill.portions().stream())
                .anyMatch(portion -> portion.part().name().equals(part) && portion.rawGrams() > 0);
    }

    /** Parts that no container has. */
    public List<Part> leftOut() {
        return dish.parts().stream().filter(part -> !has(part.name())).toList();
    }

    /** Raw edible grams of each food in the whole batch, in the order of the recipe; foods of left-out parts are absent. */
    public Map<Food, BigDecimal> ingredients() {
        var grams = new LinkedHashMap<Food, BigDecimal>();
        for (Fill fill : fills) {
            for (Portion portion : fill.portions()) {
                BigDecimal raw = BigDecimal.valueOf((long) portion.rawGrams() * fill.containers());
                if (raw.signum() > 0) {
                    portion.part()
                            .shares()
                            .forEach((food, share) -> grams.merge(food, raw.multiply(share), BigDecimal::add));
                }
            }
        }
        return grams;
    }

    /** Grams of rendered fat to pour off, by part; parts of which none is poured off, or that are left out, are absent. */
    public Map<Part, BigDecimal> fatToPourOff() {
        var grams = new LinkedHashMap<Part, BigDecimal>();
        for (Fill fill : fills) {
            for (Portion portion : fill.portions()) {
                BigDecimal raw = BigDecimal.valueOf((long) portion.rawGrams() * fill.containers());
                BigDecimal fat = portion.part().fatToPourOff(raw);
                if (fat.signum() > 0) {
                    grams.merge(portion.part(), fat, BigDecimal::add);
                }
            }
        }
        return grams;
    }
}
