package batchwright.files.shop;

import batchwright.files.table.TableRow;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.text.Span;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Warns of a pack whose price by weight is more than 20 times, or less than a twentieth of, what its neighbours cost: the packs of
 * the same food or, when there are no others, the other foods of its group, at least three. Medians, so that one wrong price does
 * not make right ones look wrong. Among US average prices of 157 foods the furthest from its group is 10 times dearer (dried egg
 * white). The group "other" is no neighbourhood: salt stands there beside spices.
 */
final class PriceNeighbours {
    private static final double FAR = 20;
    private static final int LEAST_FOODS = 3;
    private static final double GRAMS_PER_KG = 1000;
    private static final String NOT_ALIKE = "other";

    /**
     * A pack, or as much of a line with an error as a price needs.
     *
     * @param minorPerKg price of an edible kg in minor units
     */
    private record Priced(Food food, BigDecimal grams, Money price, TableRow row, double minorPerKg) {}

    /** What they are, and the median of their prices. */
    private record Neighbours(String who, double minorPerKg) {}

    private final Map<Food, List<Priced>> byFood = new LinkedHashMap<>();
    private final Problems problems;

    PriceNeighbours(Problems problems) {
        this.problems = problems;
    }

    /** @param grams as purchased */
    void add(Food food, BigDecimal grams, Money price, TableRow row) {
        double edibleGrams = grams.multiply(food.edibleShare()).doubleValue();
        byFood.computeIfAbsent(food, f -> new ArrayList<>())
                .add(new Priced(food, grams, price, row, price.minor() * GRAMS_PER_KG / edibleGrams));
    }

    /** @param currency of all prices */
    void check(Currency currency) {
        Map<String, Median> groups = groups();
        byFood.forEach((food, packs) -> {
            double ofFood = ofFood(packs).ofAll();
            OptionalDouble group = ofGroup(food, ofFood, groups);
            packs.forEach(priced -> neighbours(priced, packs, ofFood, group)
                    .filter(others -> distance(priced.minorPerKg, others.minorPerKg) > FAR)
                    .ifPresent(others -> warn(priced, others, currency)));
        });
    }

    /** The median prices of the foods of each group. */
    private Map<String, Median> groups() {
        var groups = new HashMap<String, List<Double>>();
        byFood.forEach((food, packs) -> groups.computeIfAbsent(food.group(), g -> new ArrayList<>())
                .add(ofFood(packs).ofAll()));
        var medians = new HashMap<String, Median>();
        groups.forEach((group, prices) -> medians.put(
                group,
                new Median(prices.stream().mapToDouble(Double::doubleValue).toArray())));
        return medians;
    }

    private static Median ofFood(List<Priced> packs) {
        return new Median(packs.stream().mapToDouble(Priced::minorPerKg).toArray());
    }

    /** The median of the other foods of the group; empty when they are too few or not alike. */
    private static OptionalDouble ofGroup(Food food, double ofFood, Map<String, Median> groups) {
        Median group = Objects.requireNonNull(groups.get(food.group()));
        return group.size() <= LEAST_FOODS || food.group().equals(NOT_ALIKE)
                ? OptionalDouble.empty()
                : OptionalDouble.of(group.without(ofFood));
    }

    private static Optional<Neighbours> neighbours(
            Priced priced, List<Priced> packs, double ofFood, OptionalDouble group) {
        Food food = priced.food;
        if (packs.size() == 1) {
            return group.stream()
                    .mapToObj(m -> new Neighbours("in the middle of the group " + food.group(), m))
                    .findFirst();
        }
        if (packs.size() > 2) {
            return Optional.of(new Neighbours("in the middle of all packs of " + food, ofFood));
        }
        Priced other = packs.get(priced.equals(packs.get(0)) ? 1 : 0);
        return isTheLikelierOne(priced, other, group)
                ? Optional.empty()
                : Optional.of(new Neighbours("in the other pack of " + food, other.minorPerKg));
    }

    /** Of two packs that disagree, the one nearer to the group is taken as right; if there is no group, the cheaper one. */
    private static boolean isTheLikelierOne(Priced one, Priced other, OptionalDouble group) {
        return group.isPresent()
                ? distance(one.minorPerKg, group.getAsDouble()) < distance(other.minorPerKg, group.getAsDouble())
                : one.minorPerKg < other.minorPerKg;
    }

    /** How many times one is the other, whichever is larger. */
    private static double distance(double one, double other) {
        return Math.max(one / other, other / one);
    }

    private void warn(Priced priced, Neighbours others, Currency currency) {
        BigDecimal price = currency.major(priced.price);
        PriceSlip slip = PriceSlip.likeliest(priced.minorPerKg / others.minorPerKg, priced.grams, price, currency);
        Span at = priced.row.cell(slip.column()).at();
        problems.warning(
                at,
                "an edible kg costs %s; %s it costs about %s"
                        .formatted(
                                currency.text(BigDecimal.valueOf(priced.minorPerKg)),
                                others.who,
                                currency.text(BigDecimal.valueOf(others.minorPerKg))),
                slip.says(priced.grams, price, currency));
    }
}
