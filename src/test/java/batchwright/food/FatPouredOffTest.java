package batchwright.food;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * 150 g of minced beef and 50 g of onion, 7 g of fat poured off, worked out by hand with the values of USDA SR28: 23567 beef,
 * ground, 85 % lean, raw, and 11282 onions, raw. In the 200 g as written:
 *
 * <pre>
 * energy     1.5 x 215   + 0.5 x 40    = 342.5  kcal, less 7 x 9              = 279.5   kcal
 * protein    1.5 x 18.59 + 0.5 x 1.10  = 28.435 g
 * fat        1.5 x 15.00 + 0.5 x 0.10  = 22.55  g,    less 7                  = 15.55   g
 * saturated  1.5 x 5.715 + 0.5 x 0.042 = 8.5935 g,    less 8.5935 x 7 / 22.55 = 5.92589 g
 * </pre>
 */
class FatPouredOffTest {
    private static final Offset<Double> EXACT = within(1e-5);
    private static final Food BEEF = food(
            "beef",
            Map.of(
                    Nutrient.ENERGY,
                    "215",
                    Nutrient.PROTEIN,
                    "18.59",
                    Nutrient.FAT,
                    "15.00",
                    Nutrient.SATURATED_FAT,
                    "5.715",
                    Nutrient.VITAMIN_B12,
                    "2.17"));
    private static final Food ONION = food(
            "onion",
            Map.of(
                    Nutrient.ENERGY,
                    "40",
                    Nutrient.PROTEIN,
                    "1.10",
                    Nutrient.FAT,
                    "0.10",
                    Nutrient.SATURATED_FAT,
                    "0.042",
                    Nutrient.VITAMIN_B12,
                    "0.00"));
    /** SR28 23567 and 23570 by their protein: 18.59 / 27.73 = 0.670. */
    private static final CookedYield FRIED =
            new CookedYield(BEEF, "fried", new BigDecimal("0.670"), "derived", "SR28 23567 and 23570");

    private static Food food(String id, Map<Nutrient, String> values) {
        var per100g = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        values.forEach((nutrient, value) -> per100g.put(nutrient, new BigDecimal(value)));
        return new Food(id, id, "beef", Optional.empty(), id, Nutrients.of(per100g), BigDecimal.ZERO, Set.of(), true);
    }

    private static Part part(Optional<CookedYield> beefCooked, String fat) {
        return new Part(
                "mince",
                false,
                5,
                false,
                100,
                300,
                List.of(
                        new Ingredient(BEEF, BigDecimal.valueOf(150), beefCooked),
                        new Ingredient(ONION, BigDecimal.valueOf(50), Optional.empty())),
                new FatPouredOff(new BigDecimal(fat)));
    }

    private static double in(Part part, Nutrient nutrient, int rawGrams) {
        return part.per100g()
                .ofGrams(BigDecimal.valueOf(rawGrams))
                .get(nutrient)
                .doubleValue();
    }

    @Test
    void the_part_loses_the_fat_its_energy_and_its_share_of_the_saturated_fat() {
        Part part = part(Optional.of(FRIED), "7");

        assertThat(in(part, Nutrient.ENERGY, 200)).isCloseTo(279.5, EXACT);
        assertThat(in(part, Nutrient.FAT, 200)).isCloseTo(15.55, EXACT);
        assertThat(in(part, Nutrient.SATURATED_FAT, 200)).isCloseTo(5.92589, EXACT);
        assertThat(in(part, Nutrient.ENERGY, 300)).isCloseTo(279.5 * 1.5, EXACT);
        assertThat(part.fatToPourOff(BigDecimal.valueOf(300))).isEqualByComparingTo("10.5");
    }

    @Test
    void nothing_else_is_touched() {
        Part poured = part(Optional.of(FRIED), "7");
        Part whole = part(Optional.of(FRIED), "0");

        assertThat(in(poured, Nutrient.PROTEIN, 200)).isCloseTo(28.435, EXACT);
        assertThat(in(poured, Nutrient.VITAMIN_B12, 200)).isCloseTo(1.5 * 2.17, EXACT);
        assertThat(Nutrient.values())
                .allMatch(n -> poured.per100g().isComplete(n) == whole.per100g().isComplete(n));
        assertThat(poured.shares()).isEqualTo(whole.shares());
        assertThat(whole.fatToPourOff(BigDecimal.valueOf(300))).isZero();
        assertThat(in(whole, Nutrient.ENERGY, 200)).isCloseTo(342.5, EXACT);
    }

    /**
     * Fried: 150 x 0.670 leaves the beef's fat out already; the onion loses its 7 x 0.05 / 22.55 = 0.01552 g: 150.48448 of 200.
     * With no yield all of it runs off: 193 of 200.
     */
    @Test
    void the_cooked_weight_leaves_the_fat_out_once() {
        assertThat(part(Optional.of(FRIED), "0").yieldFactor().doubleValue()).isCloseTo(150.5 / 200, EXACT);
        assertThat(part(Optional.of(FRIED), "7").yieldFactor().doubleValue()).isCloseTo(150.48448 / 200, EXACT);
        assertThat(part(Optional.empty(), "7").yieldFactor().doubleValue()).isCloseTo(193.0 / 200, EXACT);
    }

    /** A food without a value for saturated fat: what is left is known to be at least its share of what is known. */
    @Test
    void an_unknown_saturated_fat_stays_unknown() {
        Food lard = food("lard", Map.of(Nutrient.ENERGY, "900", Nutrient.PROTEIN, "0", Nutrient.FAT, "100"));
        var part = new Part(
                "lard",
                false,
                5,
                false,
                10,
                50,
                List.of(new Ingredient(lard, BigDecimal.TEN, Optional.empty())),
                new FatPouredOff(BigDecimal.valueOf(5)));

        assertThat(part.per100g().isComplete(Nutrient.SATURATED_FAT)).isFalse();
        assertThat(part.per100g().get(Nutrient.SATURATED_FAT)).isZero();
        assertThat(part.per100g().get(Nutrient.ENERGY)).isEqualByComparingTo("450");
    }
}
