package batchwright.solve;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.limit.TestTarget;
import batchwright.person.Adjustments;
import batchwright.person.Avoided;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.person.Health;
import batchwright.person.PalNumber;
import batchwright.person.Sex;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Random plan requests, small enough to enumerate. Targets are drawn around a day that is put together at random, so that most
 * requests, but not all, have a plan.
 */
public final class RandomProblems {
    /** Ways to fill one container of every dish, multiplied: what an enumeration has to go through for each eater. */
    private static final int MOST_WAYS_FOR_ONE = 300_000;

    private static final int MOST_WAYS_FOR_TWO = 20_000;

    private final RandomGenerator random;
    private final int mostEaters;
    private final int mostDays;

    private RandomProblems(long seed, int mostEaters, int mostDays) {
        this.random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        this.mostEaters = mostEaters;
        this.mostDays = mostDays;
    }

    /** For one or two eaters, one to three days. */
    public static PlanRequest of(long seed) {
        return new RandomProblems(seed, 2, 3).request();
    }

    /** Not for enumeration: for one to three eaters, one to four days. */
    public static PlanRequest larger(long seed) {
        return new RandomProblems(seed, 3, 4).request();
    }

    private PlanRequest request() {
        int eaters = random.nextInt(1, mostEaters + 1);
        Kitchen kitchen = new RandomKitchen(random, eaters == 1 ? MOST_WAYS_FOR_ONE : MOST_WAYS_FOR_TWO).kitchen();
        int days = chance(0.1) ? 1 : random.nextInt(2, mostDays + 1);
        int mostDishes = chance(0.2) ? 1 : random.nextInt(2, 4);
        List<Dish> cooked = cooked(kitchen, days, mostDishes);
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < eaters; i++) {
            Eater eater = eater("eater" + i, wishes(kitchen));
            seats.add(new Seat(eater, target(kitchen, cooked, eater.wishes())));
        }
        Optional<Money> budget = chance(0.25) ? Optional.of(new Money(random.nextInt(300, 4000))) : Optional.empty();
        return new PlanRequest(kitchen, seats, days, budget, mostDishes, Duration.ofSeconds(90));
    }

    /** The dishes that the targets are drawn around: so many as may be cooked, and mostly such as keep. */
    private List<Dish> cooked(Kitchen kitchen, int days, int mostDishes) {
        List<Dish> all = new ArrayList<>(kitchen.dishes().values());
        List<Dish> keep = all.stream().filter(dish -> dish.keepsUntil(days)).toList();
        List<Dish> from = keep.isEmpty() || chance(0.1) ? all : keep;
        return from.subList(0, Math.min(mostDishes, from.size()));
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private Wishes wishes(Kitchen kitchen) {
        List<Food> foods = List.copyOf(kitchen.foods().values());
        List<Measure> snacks = kitchen.snackMeasures();
        Set<Food> avoidFoods = chance(0.1) ? Set.of(any(foods)) : Set.of();
        Set<Allergen> avoidAllergens = chance(0.15) ? Set.of(Allergen.MILK) : Set.of();
        return new Wishes(
                random.nextInt(1, 3),
                Avoided.NOTHING.with(
                        avoidFoods,
                        avoidAllergens,
                        chance(0.1) ? Set.of(any(List.copyOf(kitchen.dishes().values()))) : Set.of()),
                always(snacks, avoidFoods, avoidAllergens),
                snacks.isEmpty() || chance(0.8)
                        ? Optional.empty()
                        : Optional.of(Set.of(any(snacks).food())),
                random.nextInt(0, 4),
                random.nextInt(1, 3));
    }

    /** Nothing that the eater avoids: such a wish contradicts itself and is refused where the files are read. */
    private List<Wishes.Always> always(List<Measure> measures, Set<Food> avoidFoods, Set<Allergen> avoidAllergens) {
        List<Measure> allowed = measures.stream()
                .filter(m -> !avoidFoods.contains(m.food())
                        && Collections.disjoint(m.food().allergens(), avoidAllergens))
                .toList();
        return allowed.isEmpty() || chance(0.8)
                ? List.of()
                : List.of(new Wishes.Always(any(allowed), random.nextInt(1, 3)));
    }

    /** What a day that is put together at random holds, and its least and most filled container. */
    private static final class Sample {
        final Map<Nutrient, Double> day = new EnumMap<>(Nutrient.class);
        double leastKcal = Double.POSITIVE_INFINITY;
        double mostKcal;
        double leastProtein = Double.POSITIVE_INFINITY;

        double of(Nutrient nutrient) {
            return day.getOrDefault(nutrient, 0.0);
        }

        void add(Nutrient nutrient, double amount) {
            day.merge(nutrient, amount, Double::sum);
        }

        void container(double kcal, double protein) {
            leastKcal = Math.min(leastKcal, kcal);
            mostKcal = Math.max(mostKcal, kcal);
            leastProtein = Math.min(leastProtein, protein);
        }
    }

    private DayTarget target(Kitchen kitchen, List<Dish> cooked, Wishes wishes) {
        Sample sample = sample(kitchen, cooked, wishes);
        double kcal = sample.of(Nutrient.ENERGY);
        double band = random.nextDouble(0.02, 0.1);
        double fat = sample.of(Nutrient.FAT);
        // Now and then more protein than the sample has, which may be out of reach.
        double protein = sample.of(Nutrient.PROTEIN) * (chance(0.1) ? 1.3 : random.nextDouble(0.8, 1.0));
        return onAverage(
                        TestTarget.energy((int) kcal, (int) Math.ceil(kcal * (1 - band)), (int)
                                        Math.floor(kcal * (1 + band)))
                                .protein((int) protein)
                                .fat((int) (fat * random.nextDouble(0.5, 0.95)), (int)
                                        Math.ceil(fat * random.nextDouble(1.05, 1.5)))
                                .fibre((int) (sample.of(Nutrient.FIBRE) * random.nextDouble(0.5, 1.0)))
                                .fruitVeg((int) (sample.of(Nutrient.FRUIT_VEG) * random.nextDouble(0.5, 1.0)))
                                .container((int) (sample.leastKcal * random.nextDouble(0.6, 1.0)), (int)
                                        Math.ceil(sample.mostKcal * random.nextDouble(1.0, 1.4)))
                                .containerProtein((int) (sample.leastProtein * random.nextDouble(0.6, 1.0))),
                        kcal)
                .target();
    }

    /** Three of four targets bind the mean of all days, too: by its least, by its most, by both. The sample keeps each. */
    private static TestTarget onAverage(TestTarget target, double kcal) {
        int aim = (int) kcal;
        return switch (aim % 4) {
            case 0 -> target.mean(Range.atLeast(aim));
            case 1 -> target.mean(Range.atMost(aim + 1));
            case 2 -> target.mean(Range.between(aim * 99 / 100, aim * 101 / 100 + 1));
            default -> target;
        };
    }

    private Sample sample(Kitchen kitchen, List<Dish> cooked, Wishes wishes) {
        var sample = new Sample();
        List<Dish> allowed = cooked.stream().filter(wishes::allows).toList();
        for (int i = 0; i < wishes.containersADay(); i++) {
            addContainer(sample, any(allowed.isEmpty() ? cooked : allowed), wishes);
        }
        for (Wishes.Always always : wishes.always()) {
            addFood(
                    sample,
                    always.measure().food(),
                    always.count() * always.measure().grams().doubleValue());
        }
        List<Measure> snacks = kitchen.snackMeasures().stream()
                .filter(measure -> wishes.allows(measure.food()))
                .toList();
        int kinds = Math.min(snacks.size(), Math.min(wishes.snackKindsADay(), wishes.snackMeasuresADay()));
        for (int i = 0; i < kinds && chance(0.8); i++) {
            addFood(sample, snacks.get(i).food(), snacks.get(i).grams().doubleValue());
        }
        return sample;
    }

    private void addContainer(Sample sample, Dish dish, Wishes wishes) {
        double kcal = sample.of(Nutrient.ENERGY);
        double protein = sample.of(Nutrient.PROTEIN);
        for (Part part : dish.parts()) {
            if (part.optional() && (chance(0.4) || !wishes.allows(part))) {
                continue;
            }
            int steps = random.nextInt((part.mostGrams() - part.leastGrams()) / part.stepGrams() + 1);
            double raw = part.leastGrams() + steps * part.stepGrams();
            BigDecimal whole = part.mix().stream().map(i -> i.amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
            part.mix().forEach(i -> addFood(sample, i.food(), raw * i.amount().doubleValue() / whole.doubleValue()));
        }
        sample.container(sample.of(Nutrient.ENERGY) - kcal, sample.of(Nutrient.PROTEIN) - protein);
    }

    private static void addFood(Sample sample, Food food, double grams) {
        for (Nutrient nutrient : Nutrient.values()) {
            sample.add(nutrient, food.per100g().get(nutrient).doubleValue() * grams / 100);
        }
    }

    private static Eater eater(String id, Wishes wishes) {
        return new Eater(
                id,
                id,
                new Body(Sex.MALE, 30, new Mass(75), new Length(175), Optional.empty()),
                new PalNumber(1.6),
                Goal.HOLD,
                Health.NOT_SAID,
                Adjustments.NONE,
                wishes);
    }
}
