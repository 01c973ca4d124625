package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.files.disk.StarterFiles;
import batchwright.food.CoreTemperature;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrients;
import batchwright.food.Step;
import batchwright.report.dishes.DishesText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** How hot raw foods must get, against published/core_temperatures.csv (USDA FSIS); and that every dish says it. */
class CoreTemperaturePublishedTest {
    private static final Kitchen KITCHEN =
            KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow();
    private static final List<CSVRecord> ROWS = CsvRows.published("core_temperatures.csv");

    /** The chart names neither offal nor bacon: they count as minced meat, the hotter one of red meat, which is a choice. */
    private static final Set<String> NOT_IN_THE_CHART = Set.of("beef_liver", "bacon");

    /** Cooked, canned or dried when it is bought. */
    private static final Pattern READY = Pattern.compile(
            "canned_.*|.*_(cooked|grilled|simmered|roasted|boiled|powder|jerky)|ham|turkey_slices|sardines|anchovies");

    private static final Pattern NAMED = Pattern.compile("(\\d+) C \\((\\d+) F\\)");

    static List<CSVRecord> rows() {
        return ROWS;
    }

    static Stream<Dish> dishes() {
        return KITCHEN.allDishes().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void the_chart_is_as_printed(CSVRecord row) {
        int fahrenheit = Integer.parseInt(row.get("fahrenheit"));
        CoreTemperature least = foods(row).isEmpty()
                ? CoreTemperature.LEFTOVERS
                : CoreTemperature.of(food(foods(row).get(0))).orElseThrow();
        assertThat(least.fahrenheit()).isEqualTo(fahrenheit);
        assertThat((double) least.celsius())
                .isCloseTo(Double.parseDouble(row.get("celsius")), within(0.5))
                .isCloseTo((fahrenheit - 32) / 1.8, within(0.5));
        assertThat(least.restMinutes()).isEqualTo(Integer.parseInt(row.get("rest")));
        for (String id : foods(row)) {
            assertThat(CoreTemperature.of(food(id))).as(id).contains(least);
        }
    }

    @Test
    void every_meat_fish_and_egg_of_the_catalogue_is_in_the_chart_or_ready() {
        Set<String> charted = ROWS.stream().flatMap(row -> foods(row).stream()).collect(Collectors.toSet());
        for (Food food : KITCHEN.foods().values()) {
            boolean raw = CoreTemperature.of(food).isPresent();
            boolean flesh = Set.of("meat", "fish", "egg").contains(food.group());
            boolean ready = READY.matcher(food.id()).matches();
            assertThat(raw).as(food.id()).isEqualTo(flesh && !ready);
            if (raw) {
                assertThat(charted.contains(food.id()) || NOT_IN_THE_CHART.contains(food.id()))
                        .as(food.id())
                        .isTrue();
            }
        }
        assertThat(NOT_IN_THE_CHART)
                .allSatisfy(id -> assertThat(CoreTemperature.of(food(id))).contains(CoreTemperature.MINCED_MEAT));
    }

    /** Foods typed from a label have no description: what is not known gets the hotter temperature. */
    @ParameterizedTest
    @CsvSource({
        "meat, pork chop, MEAT_IN_ONE_PIECE",
        "meat, pork, MINCED_MEAT",
        "meat, minced beef shoulder, MINCED_MEAT",
        "meat, turkey and pork sausage, POULTRY",
        "meat, kangaroo, POULTRY",
        "meat, cooked ham,",
        "meat, raw sausage of cooked and minced pork, MINCED_MEAT",
        "fish, plaice, FISH",
        "grain, chicken noodles,"
    })
    void a_food_with_no_more_than_a_name_is_on_the_safe_side(String group, String name, CoreTemperature least) {
        var food = new Food(
                "mine", name, group, Optional.empty(), "", Nutrients.of(Map.of()), BigDecimal.ZERO, Set.of(), true);
        assertThat(CoreTemperature.of(food)).isEqualTo(Optional.ofNullable(least));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void every_dish_shows_the_temperature_of_what_is_raw(Dish dish) {
        String shown = DishesText.one(KITCHEN, dish).replaceAll("\\s+", " ");
        String safety = shown.substring(shown.indexOf("Food safety"));
        for (Food food : dish.foods()) {
            CoreTemperature.of(food)
                    .ifPresent(least -> assertThat(safety)
                            .containsPattern(Pattern.quote(food.name()) + "[^;.]* " + least.celsius() + " C \\("
                                    + least.fahrenheit() + " F\\)"));
        }
        assertThat(safety.contains("Least temperature inside"))
                .isEqualTo(dish.foods().stream()
                        .anyMatch(food -> CoreTemperature.of(food).isPresent()));
        assertThat(safety).contains("the food-safety authority where you live goes first");
    }

    /** A temperature in a step is one of the dish's own, and not less than that of a food the step names. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dishes")
    void no_step_contradicts_it(Dish dish) {
        Set<Integer> own = dish.foods().stream()
                .flatMap(food -> CoreTemperature.of(food).stream())
                .map(CoreTemperature::celsius)
                .collect(Collectors.toSet());
        for (Step step : dish.steps()) {
            NAMED.matcher(step.text()).results().forEach(match -> {
                int celsius = Integer.parseInt(match.group(1));
                assertThat(own).as(step.text()).contains(celsius);
                assertThat((double) Integer.parseInt(match.group(2))).isCloseTo(celsius * 1.8 + 32, within(1.0));
                dish.foods().stream()
                        .filter(food -> names(step, food))
                        .flatMap(food -> CoreTemperature.of(food).stream())
                        .forEach(least -> assertThat(celsius).as(step.text()).isGreaterThanOrEqualTo(least.celsius()));
            });
        }
    }

    private static boolean names(Step step, Food food) {
        String text = step.text().toLowerCase(Locale.ROOT);
        return Pattern.compile("_").splitAsStream(food.id()).anyMatch(text::contains);
    }

    private static List<String> foods(CSVRecord row) {
        return Pattern.compile(" ")
                .splitAsStream(row.get("foods"))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    private static Food food(String id) {
        return Optional.ofNullable(KITCHEN.foods().get(id)).orElseThrow();
    }
}
