package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.Read;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How packs, loose goods and what is at home are written. */
class ShopAndPantryTest {
    private static final String PANTRY = "profiles/pantry.csv";
    private static final String SHOP = "foods/shop.csv";

    private static Read<Kitchen> read(String path, String table) {
        return KitchenReader.read(FilesInMemory.base().with(path, table), FilesInMemory.DAY);
    }

    private static Kitchen kitchen(String path, String table) {
        Read<Kitchen> read = read(path, table);
        assertThat(read.problems().stream().filter(p -> p.at().file().path().equals(path)))
                .isEmpty();
        return read.value().orElseThrow();
    }

    private static Food food(Kitchen kitchen, String id) {
        return Objects.requireNonNull(kitchen.foods().get(id));
    }

    /** A large egg is 50 g without its shell, which is 12 % of the weight as bought; a medium banana 118 g, 36 %. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "egg, 600, 600",
        "egg, 600 g, 600",
        "egg, 600g, 600",
        "egg, 1.5 kg, 1500",
        "egg, 2 lb, 907.18",
        "egg, 11 Large, 625",
        "egg, 0, 0",
        "egg, 11 large, 625",
        "egg, 5.5 large, 312.5",
        "banana, 16 medium, 2950",
        "whole_milk, 2 cup, 488"
    })
    void amounts_at_home(String id, String amount, String grams) {
        Kitchen kitchen = kitchen(PANTRY, "food,grams,note\n" + id + "," + amount + ",\n");

        assertThat(kitchen.pantryGrams(food(kitchen, id))).isEqualByComparingTo(grams);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "-1",
                "1e3",
                "600 gr",
                "'1,5 kg'",
                "101 kg",
                "large",
                "ten large",
                "10 cup",
                "2 kg large",
                "-1 large"
            })
    void amounts_at_home_that_are_refused(String amount) {
        Read<Kitchen> read = read(PANTRY, "food,grams,note\negg,\"" + amount.replace("'", "") + "\",\n");

        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).hasSize(1);
    }

    /** Ten eggs or ten grams: only a small whole number of a food that comes in pieces is odd. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "egg, 10, 1",
        "egg, 29, 1",
        "egg, 30, 0",
        "egg, 10 g, 0",
        "egg, 9.5, 0",
        "whole_milk, 10, 0",
        "pasta, 10, 0"
    })
    void few_grams_of_what_comes_in_pieces(String id, String amount, int warnings) {
        assertThat(read(PANTRY, "food,grams,note\n" + id + "," + amount + ",\n").problems())
                .hasSize(warnings)
                .noneMatch(p -> p.isError());
    }

    /** The day is 2026-11-25. The column for dates may stand anywhere, and a line without a date may end before it. */
    @Test
    void lots_with_dates() {
        Kitchen kitchen = kitchen(PANTRY, """
                food,grams,note,use_by
                whole_milk,500,open,2026-11-24
                whole_milk,1000,,2026-11-25
                whole_milk,250,,2026-11-30
                egg,300,box
                """);
        Food milk = food(kitchen, "whole_milk");

        assertThat(kitchen.pantryGrams(milk)).isEqualByComparingTo("1250");
        assertThat(kitchen.pantryGrams(milk, FilesInMemory.DAY.plusDays(1))).isEqualByComparingTo("250");
        assertThat(kitchen.pastTheirDate()).containsOnlyKeys(milk);
        assertThat(kitchen.lotsOf(food(kitchen, "egg"))).extracting(Lot::useBy).allMatch(day -> day.isEmpty());
    }

    @Test
    void what_is_past_its_date_cannot_be_cooked() {
        String sold = "food,shop,pack,grams,price,currency,seen,note\n" + line("whole_milk,corner market,carton,1950");
        FilesInMemory files = FilesInMemory.base()
                .with(SHOP, sold)
                .with(PANTRY, "food,grams,note,use_by\nrolled_oats,900,,2026-11-24\negg,900,,2026-11-25\n");

        assertThat(KitchenReader.read(files, FilesInMemory.DAY).problems())
                .extracting(p -> p.wrong())
                .containsExactly("rolled_oats is neither sold nor at home, so this dish cannot be cooked");
    }

    private static String line(String start) {
        return start + ",2.49,USD,2026-10-15,invented";
    }

    private static Pack sold(String cells, String more) {
        Kitchen kitchen = kitchen(
                SHOP,
                "food,shop,pack,grams,price,currency,seen,note,drained,step\n" + line("egg,corner market," + cells)
                        + more);
        List<Pack> packs = kitchen.packsOf(food(kitchen, "egg"));
        assertThat(packs).hasSize(1);
        return packs.get(0);
    }

    @Test
    void packs() {
        assertThat(sold("box,680", "").grams()).isEqualByComparingTo("680");
        assertThat(sold("box,680", ",,").contents().isPlain()).isTrue();
        assertThat(sold("box,680 g", "").grams()).isEqualByComparingTo("680");
        assertThat(sold("box,1.5 kg", "").grams()).isEqualByComparingTo("1500");
        assertThat(sold("box,24 oz", "").grams()).isEqualByComparingTo("680.39");
        assertThat(sold("four-pack,4 × 400 g", "").grams()).isEqualByComparingTo("1600");
        assertThat(sold("four-pack,4 x 400", "").grams()).isEqualByComparingTo("1600");
        assertThat(sold("four-pack,4x400", "").contents().units()).isEqualTo(4);
        assertThat(sold("jar,400", ",240").grams()).isEqualByComparingTo("240");
        assertThat(sold("four-pack,4 x 400", ",240").grams()).isEqualByComparingTo("960");
        assertThat(sold("loose,1000", ",,100").grams()).isEqualByComparingTo("100");
        assertThat(sold("loose,1000", ",,100").price().minor()).isEqualTo(25);
    }

    /** Cells that must be there must not be left out at the end of a line. */
    @Test
    void only_optional_cells_may_be_left_out() {
        String table = "food,shop,pack,grams,price,currency,seen,drained,note\n";

        assertThat(read(SHOP, table + "egg,corner market,box,680,2.49,USD,2026-10-15\n")
                        .problems())
                .anyMatch(p -> p.wrong().equals("7 cells: the line ends before drained"));
    }
}
