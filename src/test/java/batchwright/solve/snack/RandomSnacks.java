package batchwright.solve.snack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * Small random items and asks, the same for the same seed: 3-6 items, 0-4 pieces of each, 5-400 kcal a piece. Prices and
 * weights are coarse so that ties are common. One seed in three has tenths of a kcal; one in three has figures so fine
 * (nine decimals) that not all figures of an answer fit into one rank.
 */
final class RandomSnacks {
    private final long seed;
    private final RandomGenerator random;

    RandomSnacks(long seed) {
        this.seed = seed;
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    List<SnackItem> items() {
        List<SnackItem> items = new ArrayList<>();
        int number = random.nextInt(3, 7);
        for (int i = 0; i < number; i++) {
            items.add(item("item" + (char) ('a' + i)));
        }
        return items;
    }

    SnackItem item(String code) {
        return new SnackItem(
                code,
                energy(),
                random.nextInt(4) == 0 ? BigDecimal.ZERO : BigDecimal.valueOf(random.nextInt(0, 200), 1),
                fine(BigDecimal.valueOf(10L * random.nextInt(0, 8))),
                fine(BigDecimal.valueOf(25L * random.nextInt(0, 6), 2)),
                random.nextInt(0, 5),
                random.nextInt(3) == 0);
    }

    private BigDecimal energy() {
        return switch ((int) (seed % 3)) {
            case 0 ->
                random.nextInt(10) == 0
                        ? BigDecimal.ZERO
                        : BigDecimal.valueOf(10L * random.nextInt(1, 41)); // coarse: many equal totals
            case 1 -> BigDecimal.valueOf(random.nextInt(50, 4001), 1);
            default -> fine(BigDecimal.valueOf(random.nextInt(5, 401)));
        };
    }

    private BigDecimal fine(BigDecimal value) {
        return seed % 3 == 2 ? value.add(BigDecimal.valueOf(random.nextInt(2), 9)) : value;
    }

    /** An ask near what can be reached: most can be met, some cannot. */
    SnackAsk ask(BigDecimal mostReachable, Smallest smallest) {
        BigDecimal kcal = mostReachable
                .multiply(BigDecimal.valueOf(random.nextInt(0, 110), 2))
                .setScale(seed % 3 == 0 ? -1 : 1, RoundingMode.HALF_UP);
        return new SnackAsk(
                kcal,
                random.nextBoolean() ? BigDecimal.ZERO : BigDecimal.valueOf(random.nextInt(0, 600), 1),
                sometimes(BigDecimal.valueOf(25L * random.nextInt(2, 50), 2)),
                sometimes(kcal.add(BigDecimal.valueOf(random.nextInt(0, 80)))),
                random.nextBoolean() ? SnackAsk.NO_LIMIT : random.nextInt(1, 4),
                smallest,
                5);
    }

    private Optional<BigDecimal> sometimes(BigDecimal value) {
        return random.nextInt(3) == 0 ? Optional.of(value) : Optional.empty();
    }
}
