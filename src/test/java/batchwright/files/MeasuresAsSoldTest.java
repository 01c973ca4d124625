package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.StarterFiles;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One can of a recipe is one can of the shop: measures that are packs weigh what the pack of the starter shop holds. */
class MeasuresAsSoldTest {
    private static final List<String> PACKS = List.of("can", "block");
    private static final Kitchen KITCHEN = KitchenReader.readFoods(new StarterFiles(), LocalDate.of(2026, 11, 25))
            .value()
            .orElseThrow();

    static Stream<Measure> counted() {
        return KITCHEN.foods().values().stream()
                .flatMap(food -> KITCHEN.measuresOf(food).stream())
                .filter(measure -> PACKS.contains(measure.name()))
                .filter(measure -> !KITCHEN.packsOf(measure.food()).isEmpty());
    }

    /** Within 3 %: the can of refried beans holds 454 g, or 442 g in USDA SR28. */
    @ParameterizedTest
    @MethodSource("counted")
    void it_weighs_what_some_pack_holds(Measure measure) {
        Food food = measure.food();
        assertThat(KITCHEN.packsOf(food))
                .anySatisfy(pack -> assertThat(
                                pack.grams().subtract(measure.grams()).abs())
                        .isLessThan(measure.grams().multiply(new BigDecimal("0.03"))));
    }
}
