package batchwright.food;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A dish with some of its foods swapped, as far as its file allows that ({@link Instead}). It has the same id, and the same parts and steps
 * in the same order: it counts as the same dish.
 */
public final class Variant {
    private final Dish written;
    private final List<Swap> swaps;
    private final Dish dish;
    private final Map<String, Part> changed = new LinkedHashMap<>();

    private Variant(Dish written, List<Swap> swaps) {
        this.written = written;
        this.swaps = List.copyOf(swaps);
        this.dish = new Dish(
                written.id(),
                written.name(),
                written.kind(),
                written.fridgeDays(),
                written.freezes(),
                written.reheat(),
                written.parts().stream().map(this::part).toList(),
                written.staples(),
                written.steps().stream().map(this::step).toList(),
                this.swaps);
        for (int p = 0; p < dish.parts().size(); p++) {
            Part part = dish.parts().get(p);
            if (!part.mix().equals(written.parts().get(p).mix())) {
                changed.put(part.name(), part);
            }
        }
    }

    /** Every other way to cook a dish: each food that may be swapped as written, or by one of what may take its place. */
    public static List<Variant> of(Dish dish) {
        List<List<Swap>> ways = List.of(List.of());
        for (Map.Entry<Food, List<Swap>> one : choices(dish).entrySet()) {
            List<List<Swap>> longer = new ArrayList<>(ways);
            for (List<Swap> way : ways) {
                one.getValue()
                        .forEach(swap -> longer.add(
                                Stream.concat(way.stream(), Stream.of(swap)).toList()));
            }
            ways = longer;
        }
        return ways.stream()
                .filter(way -> !way.isEmpty())
                .map(way -> new Variant(dish, way))
                .toList();
    }

    /** How many {@link #of} finds, without making them. */
    public static long count(Dish dish) {
        return choices(dish).values().stream()
                        .mapToLong(swaps -> swaps.size() + 1L)
                        .reduce(1, (all, one) -> Math.min(all * one, Integer.MAX_VALUE))
                - 1;
    }

    /** The variant of a dish with just these swaps; empty when its file does not allow them. */
    public static Optional<Variant> of(Dish dish, List<Swap> swaps) {
        return of(dish).stream().filter(v -> v.swaps.equals(swaps)).findFirst();
    }

    private static Map<Food, List<Swap>> choices(Dish dish) {
        Map<Food, List<Swap>> choices = new LinkedHashMap<>();
        dish.parts().stream().flatMap(part -> part.mix().stream()).forEach(i -> {
            Stream<Optional<Food>> others = i.instead().others().stream().map(o -> Optional.of(o.food()));
            Stream<Optional<Food>> none = i.instead().nothing() ? Stream.of(Optional.empty()) : Stream.of();
            Stream.concat(others, none).map(by -> new Swap(i.food(), by)).forEach(swap -> {
                List<Swap> mine = choices.computeIfAbsent(i.food(), f -> new ArrayList<>());
                if (!mine.contains(swap)) {
                    mine.add(swap);
                }
            });
        });
        return choices;
    }

    public List<Swap> swaps() {
        return swaps;
    }

    /** The dish as it is cooked. */
    public Dish dish() {
        return dish;
    }

    /** Whether something in this part is swapped. */
    public boolean changes(Part part) {
        return changed.containsKey(part.name());
    }

    /** A part of the dish as it is cooked; the same as the written one when nothing in it is swapped. */
    public Part cooked(Part part) {
        return changed.getOrDefault(part.name(), part);
    }

    /** What a step of the variant handles in the place of something that the written step does; nothing when that is left out. */
    public List<Handled> handled(Handled handled) {
        return handled instanceof Handled.OfFood food ? handled(food) : List.of(handled);
    }

    private Part part(Part part) {
        List<Ingredient> mix = part.mix().stream()
                .flatMap(i -> swap(i).map(swap -> swapped(i, swap)).orElse(Stream.of(i)))
                .toList();
        return mix.equals(part.mix()) ? part : part.with(mix);
    }

    /** The swap that holds for an ingredient: its own recipe line must allow it. */
    private Optional<Swap> swap(Ingredient ingredient) {
        return swaps.stream()
                .filter(swap -> swap.food().equals(ingredient.food()))
                .filter(swap -> swap.by()
                        .map(by -> other(ingredient, by).isPresent())
                        .orElse(ingredient.instead().nothing()))
                .findFirst();
    }

    private static Optional<Ingredient> other(Ingredient ingredient, Food by) {
        return ingredient.instead().others().stream()
                .filter(other -> other.food().equals(by))
                .findFirst();
    }

    private static Stream<Ingredient> swapped(Ingredient ingredient, Swap swap) {
        return swap.by().flatMap(by -> other(ingredient, by)).stream();
    }

    private Step step(Step step) {
        return new Step(
                step.text(),
                step.ways().stream().map(this::way).toList(),
                handled(step.with()),
                step.after(),
                step.fills(),
                step.dayBefore(),
                step.parts());
    }

    private Way way(Way way) {
        return new Way(
                way.on(),
                way.celsius(),
                way.shelves(),
                way.laws().stream().map(this::law).toList(),
                way.pot().map(pot -> new Way.Volume(pot.litresPerKg(), handled(pot.of()))));
    }

    private TimeLaw law(TimeLaw law) {
        if (law instanceof TimeLaw.HandWork work) {
            return new TimeLaw.HandWork(work.minutes(), perKg(work.perKg()));
        }
        if (law instanceof TimeLaw.Loads loads) {
            return new TimeLaw.Loads(loads.minutes(), loads.each(), loads.grams(), handled(loads.of()));
        }
        return law instanceof TimeLaw.Power power ? new TimeLaw.Power(power.minutes(), perKg(power.perKg())) : law;
    }

    private Map<Handled, Double> perKg(Map<Handled, Double> minutes) {
        Map<Handled, Double> mine = new LinkedHashMap<>();
        minutes.forEach((what, each) -> handled(what).forEach(one -> mine.merge(one, each, Double::sum)));
        return mine;
    }

    private List<Handled> handled(List<Handled> all) {
        return all.stream().flatMap(one -> handled(one).stream()).toList();
    }

    /** Of a food that is swapped in some part, or comes into one by a swap, each part is named: no gram counts twice. */
    private List<Handled> handled(Handled.OfFood food) {
        boolean touched = swaps.stream()
                .anyMatch(swap -> swap.food().equals(food.food())
                        || swap.by().filter(food.food()::equals).isPresent());
        if (!touched) {
            return List.of(food);
        }
        List<Handled> mine = new ArrayList<>();
        for (Part part : written.parts()) {
            if (food.part().filter(name -> !name.equals(part.name())).isEmpty()) {
                part.mix().stream()
                        .filter(i -> i.food().equals(food.food()))
                        .flatMap(i -> inPlaceOf(i).stream())
                        .forEach(used -> mine.add(ofFood(used, part, food.share())));
            }
        }
        return mine;
    }

    private Optional<Food> inPlaceOf(Ingredient ingredient) {
        return swap(ingredient).map(Swap::by).orElse(Optional.of(ingredient.food()));
    }

    private static Handled ofFood(Food food, Part part, BigDecimal share) {
        return new Handled.OfFood(food, Optional.of(part.name()), share);
    }
}
