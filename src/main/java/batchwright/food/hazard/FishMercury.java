package batchwright.food.hazard;

import batchwright.food.Food;
import batchwright.text.ResourceTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Mercury in a kind of fish.
 *
 * @param advised how much of it a week is advised for those who may become pregnant
 * @param ugPerG mean total mercury, if it is known here
 */
public record FishMercury(Advised advised, Optional<BigDecimal> ugPerG, FoodWords fish) {
    private static final int COLUMNS = 4;
    private static final List<FishMercury> ALL =
            ResourceTable.divided(FishMercury.class, "fish_mercury.csv", COLUMNS).stream()
                    .map(FishMercury::of)
                    .toList();

    /** Classes of FDA and EPA, 2021: servings a week. */
    public enum Advised {
        BEST(3),
        GOOD(1),
        AVOID(0);

        private final int servings;

        Advised(int servings) {
            this.servings = servings;
        }

        /** At most so many a week. */
        public int servings() {
            return servings;
        }
    }

    private static FishMercury of(List<String> cells) {
        String ppm = cells.get(2);
        return new FishMercury(
                Advised.valueOf(cells.get(1).toUpperCase(Locale.ROOT)),
                ppm.equals("-") ? Optional.empty() : Optional.of(new BigDecimal(ppm)),
                FoodWords.of(cells.get(0), ""));
    }

    /** Empty for what is not fish, and for fish that the table does not know. */
    public static Optional<FishMercury> of(Food food) {
        return food.group().equals("fish")
                ? ALL.stream().filter(line -> line.fish.fit(food)).findFirst()
                : Optional.empty();
    }
}
