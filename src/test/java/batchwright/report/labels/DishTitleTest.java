package batchwright.report.labels;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.plan.Portion;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A box is not called by what is left out of it. The titles are what a cook would write (our choice). */
class DishTitleTest {
    private static final Kitchen KITCHEN = KitchenReader.read(new StarterFiles(), LocalDate.of(2026, 11, 25))
            .value()
            .orElseThrow();

    static List<Dish> dishes() {
        return List.copyOf(KITCHEN.dishes().values());
    }

    private static Dish dish(String id) {
        return dishes().stream().filter(d -> d.id().equals(id)).findFirst().orElseThrow();
    }

    private static String title(Dish dish, Set<String> leftOut) {
        return DishTitle.of(dish, portions(dish, leftOut));
    }

    private static List<Portion> portions(Dish dish, Set<String> leftOut) {
        return dish.parts().stream()
                .map(part -> new Portion(part, leftOut.contains(part.name()) ? 0 : part.leastGrams()))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ginger_pork_rice | rice | Ginger pork and cabbage with sesame carrots",
                "beef_goulash | noodles | Paprika beef goulash with green beans",
                "baked_oats | walnuts | Baked oats with apple and warm blueberries",
                "lentil_ragu | pasta | Lentil and mushroom ragu with parmesan",
                "lentil_ragu | pasta,parmesan | Lentil and mushroom ragu",
                "greek_chicken_bowl | bulgur | Oregano chicken with roast vegetables and cucumber yogurt",
                "tofu_peanut_noodles | noodles | Baked tofu with peanut and lemon sauce and fried vegetables",
                "mustard_pork_tray | potatoes | Sheet-pan mustard pork with Brussels sprouts and carrots",
                "peanut_stew | rice | West African chicken and peanut stew with sweet potato and kale",
                "peanut_stew | peanuts | West African chicken and peanut stew with sweet potato, kale and rice",
                "cottage_pancakes | protein powder | Cottage-cheese oat pancakes with berry sauce and almond butter",
                "tuna_bean_pasta | pasta | Tuna and bean sauce, green beans",
                "shrimp_quinoa | quinoa | Shrimp and egg, vegetables",
                "turkey_chili | corn tortillas,cheddar | Smoky turkey chili",
            })
    void what_is_left_out_leaves_the_title(String id, String leftOut, String title) {
        assertThat(title(dish(id), Set.of(leftOut.split(",")))).isEqualTo(title);
    }

    /** "Sprinkle the rice with a spoon of water" is of no use without rice. */
    @Test
    void how_to_reheat_does_not_speak_of_what_is_left_out() {
        Dish pork = dish("ginger_pork_rice");
        Dish oats = dish("overnight_oats");

        assertThat(new Reheating(pork, portions(pork, Set.of())).inFull()).contains("Sprinkle the rice", "74 C");
        assertThat(new Reheating(pork, portions(pork, Set.of("rice"))).inFull())
                .isEqualTo("Reheat: until steaming, 74\u00a0°C (165\u00a0°F) inside.");
        assertThat(new Reheating(oats, portions(oats, Set.of("almonds"))).inFull())
                .contains("Eat cold", "74 C")
                .doesNotContain("almonds");
        assertThat(new Reheating(oats, portions(oats, Set.of())).inLeast()).endsWith("or eat cold");
    }

    @ParameterizedTest
    @MethodSource("dishes")
    void a_box_with_all_parts_has_the_name_of_the_dish(Dish dish) {
        assertThat(title(dish, Set.of())).isEqualTo(dish.name());
    }

    /** Every choice of optional parts that can be left out. */
    @ParameterizedTest
    @MethodSource("dishes")
    void no_title_names_a_part_that_is_left_out(Dish dish) {
        List<String> optional =
                dish.parts().stream().filter(Part::optional).map(Part::name).toList();
        for (int choice = 1; choice < 1 << optional.size(); choice++) {
            Set<String> leftOut = chosen(optional, choice);
            String title = title(dish, leftOut).toLowerCase(Locale.ROOT);

            assertThat(title)
                    .isNotBlank()
                    .doesNotContain(",,", "  ")
                    .doesNotEndWith(" and")
                    .doesNotEndWith("with");
            assertThat(leftOut).allSatisfy(part -> assertThat(title).doesNotMatch(".*\\b" + part + "\\b.*"));
        }
    }

    private static Set<String> chosen(List<String> of, int choice) {
        List<String> chosen = new ArrayList<>();
        for (int i = 0; i < of.size(); i++) {
            if ((choice >> i & 1) == 1) {
                chosen.add(of.get(i));
            }
        }
        return chosen.stream().collect(Collectors.toSet());
    }

    @Test
    void a_name_in_one_piece_that_names_it_gives_way_to_the_parts() {
        Dish rice = dish("ginger_pork_rice");
        Dish other = new Dish(
                rice.id(),
                "Schwein mit Rice",
                rice.kind(),
                rice.fridgeDays(),
                rice.freezes(),
                rice.reheat(),
                rice.parts(),
                rice.staples(),
                rice.steps());

        assertThat(title(other, Set.of("rice"))).isEqualTo("Ginger pork, cabbage and carrots, peas");
    }
}
