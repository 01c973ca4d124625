package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Handled;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.person.Wishes.Always;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.math.BigDecimal;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Sums that several rules need, as expressions of a draft. */
public final class Amounts {
    /** Hundreds of grams in a gram. */
    public static final double PER_100_G = 0.01;

    private Amounts() {}

    /** A nutrient in all containers of a dish for an eater together. */
    public static Expression inContainers(Draft draft, Seat seat, Dish dish, Nutrient nutrient) {
        return inParts(draft, seat, dish, part -> inGram(part, nutrient));
    }

    /** What all containers of a dish for an eater hold of something, of which a gram of a part as it is cooked has so much. */
    private static Expression inParts(Draft draft, Seat seat, Dish dish, ToDoubleFunction<Part> inGram) {
        return inParts(draft, seat, dish, inGram, variant -> inGram);
    }

    private static Expression inParts(
            Draft draft,
            Seat seat,
            Dish dish,
            ToDoubleFunction<Part> asWritten,
            Function<Variant, ToDoubleFunction<Part>> as) {
        var sum = new Expression();
        for (Part part : dish.parts()) {
            double inGram = asWritten.applyAsDouble(part);
            if (inGram != 0) {
                sum.plus(draft.grams(seat, dish, part), inGram);
            }
            for (Variant variant : draft.menu().variants(dish)) {
                double more = as.apply(variant).applyAsDouble(variant.cooked(part)) - inGram;
                if (more != 0) {
                    sum.plus(draft.gramsAs(seat, variant, part), more);
                }
            }
        }
        return sum;
    }

    /** A nutrient in one raw gram of a part. */
    public static double inGram(Part part, Nutrient nutrient) {
        return part.per100g().get(nutrient).doubleValue() * PER_100_G;
    }

    /** A nutrient in one of a household measure. */
    public static double inMeasure(Measure measure, Nutrient nutrient) {
        return measure.food().per100g().ofGrams(measure.grams()).get(nutrient).doubleValue();
    }

    /** A nutrient in what an eater always eats in a day. */
    public static double inAlways(Seat seat, Nutrient nutrient) {
        double sum = 0;
        for (Always always : seat.eater().wishes().always()) {
            sum += always.count() * inMeasure(always.measure(), nutrient);
        }
        return sum;
    }

    /** A nutrient in all that an eater eats on all days together. */
    public static Expression inAllDays(Draft draft, Seat seat, Nutrient nutrient) {
        var sum = Expression.of(inAlways(seat, nutrient) * draft.request().days());
        for (Dish dish : draft.menu().dishes(seat)) {
            sum.plus(inContainers(draft, seat, dish, nutrient), 1);
        }
        for (Measure measure : draft.menu().snacks(seat)) {
            sum.plus(draft.snacks(seat, measure), inMeasure(measure, nutrient));
        }
        return sum;
    }

    /** Grams of a food as purchased that a dish uses, over all eaters. */
    public static Expression usedBy(Draft draft, Dish dish, Food food) {
        return usedBy(draft, dish, food, part -> 1);
    }

    /** Grams of a food as purchased that are to be at hand for a dish, over all eaters: what it uses, and room to spare. */
    public static Expression atHandFor(Draft draft, Dish dish, Food food) {
        return usedBy(draft, dish, food, part -> atHand(draft, part));
    }

    /** Grams that are to be at hand for each gram of a part. */
    static double atHand(Draft draft, Part part) {
        return draft.request().kitchen().shops().atHand(part).doubleValue();
    }

    private static Expression usedBy(Draft draft, Dish dish, Food food, ToDoubleFunction<Part> times) {
        var sum = new Expression();
        double perEdible = 1 / food.edibleShare().doubleValue();
        for (Seat seat : draft.request().seats()) {
            if (draft.menu().dishes(seat).contains(dish)) {
                sum.plus(
                        inParts(
                                draft,
                                seat,
                                dish,
                                part -> part.shares()
                                                .getOrDefault(food, BigDecimal.ZERO)
                                                .doubleValue()
                                        * perEdible
                                        * times.applyAsDouble(part)),
                        1);
            }
        }
        return sum;
    }

    /** Grams of a food as purchased that an eater's snacks use. */
    public static Expression usedBySnacks(Draft draft, Seat seat, Food food) {
        var sum = new Expression();
        double perEdible = 1 / food.edibleShare().doubleValue();
        for (Measure measure : draft.menu().snacks(seat)) {
            if (measure.food().equals(food)) {
                sum.plus(draft.snacks(seat, measure), measure.grams().doubleValue() * perEdible);
            }
        }
        return sum;
    }

    /** Grams of a food as purchased that are always eaten, over all eaters and days. */
    public static double usedAlways(Draft draft, Food food) {
        double edible = 0;
        for (Seat seat : draft.request().seats()) {
            for (Always always : seat.eater().wishes().always()) {
                if (always.measure().food().equals(food)) {
                    edible += always.count()
                            * always.measure().grams().doubleValue()
                            * draft.request().days();
                }
            }
        }
        return edible / food.edibleShare().doubleValue();
    }

    /** Raw edible grams of something that a step of a dish handles, over all eaters; of staples none are counted. */
    public static Expression grams(Draft draft, Dish dish, Handled handled) {
        return handled(draft, dish, handled, what -> 1);
    }

    /** The same as purchased. */
    public static Expression boughtGrams(Draft draft, Dish dish, Handled handled) {
        return handled(
                draft,
                dish,
                handled,
                what -> what instanceof Handled.OfFood food
                        ? 1 / food.food().edibleShare().doubleValue()
                        : 1);
    }

    private static Expression handled(Draft draft, Dish dish, Handled handled, ToDoubleFunction<Handled> perEdible) {
        var sum = new Expression();
        for (Seat seat : draft.request().seats()) {
            if (draft.menu().dishes(seat).contains(dish)) {
                Expression mine = inParts(
                        draft,
                        seat,
                        dish,
                        part -> share(handled, part) * perEdible.applyAsDouble(handled),
                        variant -> part -> variant.handled(handled).stream()
                                .mapToDouble(what -> share(what, part) * perEdible.applyAsDouble(what))
                                .sum());
                sum.plus(mine, 1);
            }
        }
        return sum;
    }

    private static double share(Handled handled, Part part) {
        return handled.match(new Handled.Cases<Double>() {
            @Override
            public Double food(Handled.OfFood food) {
                return food.part().filter(name -> !name.equals(part.name())).isPresent()
                        ? 0
                        : part.shares()
                                .getOrDefault(food.food(), BigDecimal.ZERO)
                                .multiply(food.share())
                                .doubleValue();
            }

            @Override
            public Double part(Handled.OfPart own) {
                return own.part().equals(part.name()) ? 1.0 : 0.0;
            }

            @Override
            public Double staple(Handled.OfStaple staple) {
                return 0.0;
            }
        });
    }
}
