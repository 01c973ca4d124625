package batchwright.food;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Raw minced meat less the fat that ran out holds what the browned meat of USDA SR28 holds: energy within 1 %, saturated fat
 * within 8 % (both entries are of different samples; beef agrees within 1 %, pork is 7 % off).
 */
class FatPouredOffPublishedTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/rendered_fat.csv", useHeadersInDisplayName = true)
    void what_is_left_is_the_browned_meat(
            String meat,
            String rawNdb,
            BigDecimal rawKcal,
            BigDecimal rawProtein,
            BigDecimal rawFat,
            BigDecimal rawSaturated,
            String brownedNdb,
            BigDecimal brownedKcal,
            BigDecimal brownedProtein,
            BigDecimal brownedFat,
            BigDecimal brownedSaturated) {
        BigDecimal yield = rawProtein.divide(brownedProtein, MathContext.DECIMAL64);
        BigDecimal ranOut = rawFat.subtract(yield.multiply(brownedFat)).setScale(3, RoundingMode.HALF_UP);
        var raw = new Food(
                "raw",
                meat,
                "beef",
                Optional.of(rawNdb),
                meat,
                Nutrients.of(Map.of(
                        Nutrient.ENERGY,
                        rawKcal,
                        Nutrient.PROTEIN,
                        rawProtein,
                        Nutrient.FAT,
                        rawFat,
                        Nutrient.SATURATED_FAT,
                        rawSaturated)),
                BigDecimal.ZERO,
                Set.of(),
                true);
        var fried = new CookedYield(raw, "fried", yield, "derived", rawNdb + " and " + brownedNdb);
        var part = new Part(
                "mince",
                false,
                5,
                false,
                100,
                200,
                List.of(new Ingredient(raw, BigDecimal.valueOf(100), Optional.of(fried))),
                new FatPouredOff(ranOut));

        double cooked = 100 * part.yieldFactor().doubleValue();
        Nutrients left = part.per100g();
        assertThat(left.get(Nutrient.ENERGY).doubleValue())
                .isCloseTo(cooked * brownedKcal.doubleValue() / 100, within(0.01 * rawKcal.doubleValue()));
        assertThat(left.get(Nutrient.SATURATED_FAT).doubleValue())
                .isCloseTo(cooked * brownedSaturated.doubleValue() / 100, within(0.08 * rawSaturated.doubleValue()));
    }
}
