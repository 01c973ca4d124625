package batchwright.plan;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Handled;
import batchwright.food.Part;
import batchwright.food.Shops;
import batchwright.food.Step;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** All containers of a dish that are cooked in the session. */
public record Batch(Dish dish, List<Fill> fills) {
    public Batch {
        fills = List.copyOf(fills);
    }

    public int containers() {
        return fills.stream().mapToInt(Fill::containers).sum();
    }

    /** Whether the step is done: one for parts that no container has is dropped. */
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
        return ingredients(part -> BigDecimal.ONE);
    }

    /** The same with room to spare. */
    public Map<Food, BigDecimal> atHand(Shops shops) {
        return ingredients(shops::atHand);
    }

    private Map<Food, BigDecimal> ingredients(Function<Part, BigDecimal> times) {
        var grams = new LinkedHashMap<Food, BigDecimal>();
        for (Fill fill : fills) {
            for (Portion portion : fill.portions()) {
                BigDecimal raw = BigDecimal.valueOf((long) portion.rawGrams() * fill.containers());
                BigDecimal needed = raw.multiply(times.apply(portion.part()));
                if (raw.signum() > 0) {
                    portion.part()
                            .shares()
                            .forEach((food, share) -> grams.merge(food, needed.multiply(share), BigDecimal::add));
                }
            }
        }
        return grams;
    }

    /** Raw edible grams of something that a step handles; empty for a staple that goes in to taste. */
    public Optional<BigDecimal> grams(Handled handled) {
        return handled.match(new Handled.Cases<>() {
            @Override
            public Optional<BigDecimal> food(Handled.OfFood food) {
                return Optional.of(gramsOf(food).multiply(food.share()));
            }

            @Override
            public Optional<BigDecimal> part(Handled.OfPart part) {
                return Optional.of(BigDecimal.valueOf(rawGrams(part.part())));
            }

            @Override
            public Optional<BigDecimal> staple(Handled.OfStaple staple) {
                return staple.staple().grams().map(g -> g.multiply(recipes()).multiply(staple.share()));
            }
        });
    }

    private BigDecimal gramsOf(Handled.OfFood food) {
        BigDecimal grams = BigDecimal.ZERO;
        for (Part part : dish.parts()) {
            BigDecimal share = part.shares().get(food.food());
            if (share != null
                    && food.part().filter(name -> !name.equals(part.name())).isEmpty()) {
                grams = grams.add(BigDecimal.valueOf(rawGrams(part.name())).multiply(share));
            }
        }
        return grams;
    }

    /** In all containers together. */
    private long rawGrams(String part) {
        return fills.stream()
                .mapToLong(fill -> fill.containers()
                        * fill.portions().stream()
                                .filter(portion -> portion.part().name().equals(part))
                                .mapToLong(Portion::rawGrams)
                                .sum())
                .sum();
    }

    /** How many containers filled as the recipe is written the parts that are never left out come to. */
    private BigDecimal recipes() {
        BigDecimal raw = BigDecimal.ZERO;
        BigDecimal written = BigDecimal.ZERO;
        for (Part part : dish.parts()) {
            if (!part.optional()) {
                raw = raw.add(BigDecimal.valueOf(rawGrams(part.name())));
                written = written.add(part.writtenGrams());
            }
        }
        return written.signum() == 0 ? BigDecimal.valueOf(containers()) : raw.divide(written, MathContext.DECIMAL64);
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
