package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.plan.Portion;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Random requests for containers of one dish, small enough to enumerate. Wishes are drawn around a container that is filled at
 * random, so that about half of the requests are possible.
 */
final class RandomDishes {
    private static final int MOST_WAYS = 2_000_000_000;
    private static final List<String> BANDS = List.of("0", "0.5", "1", "3", "5", "10");

    private final RandomGenerator random;

    private RandomDishes(long seed) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    static DishRequest of(long seed) {
        return new RandomDishes(seed).request();
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    private DishRequest request() {
        Kitchen kitchen = new RandomKitchen(random, MOST_WAYS).kitchen();
        List<Dish> dishes = List.copyOf(kitchen.dishes().values());
        Dish dish = dishes.get(random.nextInt(dishes.size()));
        Set<String> with = new HashSet<>();
        Set<String> without = new HashSet<>();
        for (Part part : dish.parts()) {
            if (part.optional() && chance(0.3)) {
                (chance(0.5) ? with : without).add(part.name());
            }
        }
        return new DishRequest(
                kitchen,
                dish,
                random.nextInt(1, 9),
                wish(sample(dish)).withParts(with, without),
                chance(0.85),
                chance(0.25) ? Optional.of(new Money(random.nextInt(100, 2500))) : Optional.empty(),
                Duration.ofSeconds(60));
    }

    private Nutrients sample(Dish dish) {
        Nutrients sum = Nutrients.NONE;
        for (Part part : dish.parts()) {
            int steps = random.nextInt(part.leastGrams() / part.stepGrams(), part.mostGrams() / part.stepGrams() + 1);
            sum = sum.plus(
                    new Portion(part, part.optional() && chance(0.4) ? 0 : steps * part.stepGrams()).nutrients());
        }
        return sum;
    }

    private ContainerWish wish(Nutrients around) {
        Optional<EnergyBand> energy = chance(0.85) ? Optional.of(band(around.get(Nutrient.ENERGY))) : Optional.empty();
        boolean protein = energy.isEmpty() || chance(0.6);
        return new ContainerWish(
                energy,
                protein ? Optional.of(near(around.get(Nutrient.PROTEIN), 0.7, 1.15)) : Optional.empty(),
                chance(0.25) ? Optional.of(near(around.get(Nutrient.FAT), 0.9, 1.6)) : Optional.empty(),
                Set.of(),
                Set.of());
    }

    private EnergyBand band(BigDecimal kcal) {
        BigDecimal aim = near(kcal, 0.9, 1.1);
        if (chance(0.2)) {
            return EnergyBand.between(aim, aim.add(BigDecimal.valueOf(random.nextInt(0, 40))));
        }
        return EnergyBand.around(aim, new BigDecimal(BANDS.get(random.nextInt(BANDS.size()))));
    }

    /** To a tenth. */
    private BigDecimal near(BigDecimal value, double least, double most) {
        return value.multiply(BigDecimal.valueOf(random.nextDouble(least, most)))
                .setScale(1, RoundingMode.HALF_UP);
    }
}
