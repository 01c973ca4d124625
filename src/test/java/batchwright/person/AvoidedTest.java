package batchwright.person;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.food.origin.Diet;
import batchwright.food.origin.OriginList;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which foods, parts and dishes reach somebody with a diet. */
class AvoidedTest {
    private static final Food RICE = food("rice", "none");
    private static final Food PORK = food("pork", "pig");
    private static final Food CHEESE = food("cheese", "milk by_product?");
    private static final Food BREAD = food("bread", "gluten_cereal");
    private static final Food MINE = food("mine", "");

    private static Food food(String id, String origins) {
        return new Food(
                id,
                id,
                "other",
                Optional.empty(),
                id,
                Nutrients.NONE,
                BigDecimal.ZERO,
                Set.of(),
                false,
                OriginList.of(origins).orElseThrow(),
                Set.of());
    }

    private static Part part(Food food, boolean optional) {
        return new Part(
                food.id(), optional, 5, false, 5, 100, List.of(new Ingredient(food, BigDecimal.TEN, Optional.empty())));
    }

    private static Dish dish(List<String> staples, Part... parts) {
        return new Dish(
                "dish",
                "dish",
                Dish.Kind.MAIN,
                3,
                true,
                "cold",
                List.of(parts),
                staples.stream().map(Staple::of).toList(),
                List.of());
    }

    private static Avoided diet(String... words) {
        return Avoided.NOTHING.withDiets(
                Stream.of(words).map(word -> Diet.byWord(word).orElseThrow()).collect(Collectors.toSet()));
    }

    @Test
    void what_is_barred_what_is_asked_and_what_was_read() {
        Avoided vegetarian = diet("vegetarian");

        assertThat(vegetarian.allows(RICE)).isTrue();
        assertThat(vegetarian.allows(PORK)).isFalse();
        assertThat(vegetarian.allows(CHEESE)).isFalse();
        assertThat(vegetarian.allows(MINE)).isFalse();
        assertThat(vegetarian.withChecked(Set.of("cheese", "mine", "pork")).allows(CHEESE))
                .isTrue();
        assertThat(vegetarian.withChecked(Set.of("cheese", "mine", "pork")).allows(MINE))
                .isTrue();
        assertThat(vegetarian.withChecked(Set.of("cheese", "mine", "pork")).allows(PORK))
                .as("a label lifts no certain bar")
                .isFalse();
        assertThat(Avoided.NOTHING.allows(MINE)).as("nobody asks").isTrue();
    }

    @Test
    void a_part_is_left_out_unless_traces_matter() {
        Dish porkApart = dish(List.of("salt"), part(RICE, false), part(PORK, true));
        Dish breadApart = dish(List.of("salt"), part(RICE, false), part(BREAD, true));

        assertThat(diet("vegetarian").allows(porkApart)).isTrue();
        assertThat(diet("vegetarian").allows(porkApart.parts().get(1))).isFalse();
        assertThat(diet("vegetarian").allows(dish(List.of(), part(PORK, false))))
                .isFalse();
        assertThat(diet("gluten_free").allows(breadApart)).isFalse();
        assertThat(diet("vegetarian").allows(breadApart)).isTrue();
    }

    @Test
    void staples_count() {
        Dish plain = dish(List.of("salt", "black pepper"), part(RICE, false));
        Dish sauce = dish(List.of("fish sauce"), part(RICE, false));
        Dish sour = dish(List.of("vinegar"), part(RICE, false));
        Dish odd = dish(List.of("my secret"), part(RICE, false));

        assertThat(diet("vegan", "gluten_free", "no_alcohol").allows(plain)).isTrue();
        assertThat(diet("vegan").allows(sauce)).isFalse();
        assertThat(diet("no_alcohol").allows(sour)).isFalse();
        assertThat(diet("no_alcohol").withChecked(Set.of("vinegar")).allows(sour))
                .isTrue();
        assertThat(diet("vegan").allows(odd)).isFalse();
        assertThat(diet("vegan").withChecked(Set.of("my_secret")).allows(odd)).isTrue();
    }
}
