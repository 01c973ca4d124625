package batchwright.food.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which dishes a rule is about: by the words of their foods and steps, as people write them. */
class HazardTest {
    private static Food food(String name) {
        return new Food(
                name.replace(' ', '_'),
                name,
                "other",
                Optional.empty(),
                name,
                Nutrients.NONE,
                BigDecimal.ZERO,
                Set.of(),
                true);
    }

    private static boolean hits(String code, String food, String step, int minutes) {
        var part = new Part(
                "fruit",
                false,
                5,
                false,
                5,
                500,
                List.of(new Ingredient(food(food), BigDecimal.TEN, Optional.empty())));
        var way = new Way(
                Optional.empty(), OptionalInt.empty(), 1, List.of(new TimeLaw.ByItself(minutes)), Optional.empty());
        var only = new Step(step, List.of(way), List.of(), List.of(), true, false, List.of());
        var dish = new Dish("d", "d", Dish.Kind.MAIN, 3, true, "cold", List.of(part), List.of(), List.of(only));
        return !Hazard.of(code).in(dish).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "red kidney beans | Soak the beans, then boil them hard for 10 minutes. | 40 | false",
                "red kidney beans | Boil the soaked beans in fresh water. | 45 | false",
                "red kidney beans | Boil the soaked beans for 5 minutes; simmer until soft. | 60 | true",
                "red kidney beans | Boil the beans in fresh water. | 9 | true",
                "red kidney beans | Boil the rice for 12 minutes. | 12 | true",
                "red kidney beans | Do not boil the beans. | 60 | true",
                "red kidney beans | Cook the beans at pressure for 20 minutes. | 30 | false",
                "pinto beans | Simmer the beans. | 90 | true",
                "red kidney beans canned | Heat all. | 5 | false",
                "green beans | Toss. | 5 | false",
                "chickpeas | Toss. | 5 | false"
            })
    void dried_beans_are_boiled(String food, String step, int minutes, boolean hit) {
        assertThat(hits("raw_beans", food, step, minutes)).isEqualTo(hit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "frozen blueberries | Stir the berries in. | true",
                "frozen blueberries | Boil the berries for 1 minute. | false",
                "frozen raspberries | Simmer the fruit under a lid. | false",
                "frozen raspberries | Bake the oats; top with the berries when cold. | true",
                "frozen raspberries | Blend the berries without cooking. | true",
                "raspberries | Stir in. | false",
                "frozen peas | Stir in. | false"
            })
    void frozen_berries_are_heated(String food, String step, boolean hit) {
        assertThat(hits("frozen_berries", food, step, 5)).isEqualTo(hit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "egg | Boil the eggs until the yolk is runny. | true",
                "egg | Poach until just set, with soft yolks. | true",
                "egg | Bake until no longer runny. | false",
                "egg | Bake until firm. | false",
                "egg noodles | Serve with a runny sauce. | false"
            })
    void eggs_are_firm(String food, String step, boolean hit) {
        assertThat(hits("soft_eggs", food, step, 5)).isEqualTo(hit);
    }

    /** As they are sold, without a dish. */
    @Test
    void snacks_are_raw() {
        List<Food> eaten = List.of(food("frozen strawberries"), food("egg"), food("ham sliced"));

        assertThat(Hazard.of("frozen_berries").in(eaten)).containsExactly(eaten.get(0));
        assertThat(Hazard.of("soft_eggs").in(eaten)).isEmpty();
        assertThat(Hazard.of("listeria_foods").in(eaten)).containsExactly(eaten.get(2));
    }

    /** Inside a cooked dish smoked fish is fine (CDC). */
    @ParameterizedTest
    @CsvSource({"Bake the salmon with the potatoes., false", "Lay the salmon on the cold potatoes., true"})
    void smoked_fish_is_heated(String step, boolean hit) {
        assertThat(hits("listeria_foods", "smoked salmon", step, 5)).isEqualTo(hit);
    }

    @ParameterizedTest
    @CsvSource({"white rice, true", "rice noodles, false", "brown rice cake, false", "puffed rice cereal, false"})
    void rice(String food, boolean hit) {
        assertThat(Hazard.of("rice").in(List.of(food(food))).isEmpty()).isNotEqualTo(hit);
    }
}
