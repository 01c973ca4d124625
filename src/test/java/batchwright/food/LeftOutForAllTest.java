package batchwright.food;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A stew with noodles; both are invented. */
class LeftOutForAllTest {
    private static final Food MEAT = food("meat");
    private static final Food WHEAT = food("wheat_noodles");
    private static final Part STEW = part("stew", false, MEAT);
    private static final Part NOODLES = part("noodles", true, WHEAT);
    private static final Step BOIL_APART = step("boil", List.of(), List.of("noodles"), WHEAT);
    private static final Step STEWED = step("stew", List.of(), List.of(), MEAT);

    private static Food food(String id) {
        return new Food(
                id, id, "invented", Optional.empty(), id, Nutrients.of(Map.of()), BigDecimal.ZERO, Set.of(), false);
    }

    private static Part part(String name, boolean optional, Food food) {
        var all = new Ingredient(food, BigDecimal.TEN, Optional.empty());
        return new Part(name, optional, 5, false, 100, 200, List.of(all));
    }

    private static Step step(String text, List<Integer> after, List<String> parts, Food... foods) {
        var way = new Way(Optional.empty(), OptionalInt.empty(), 1, List.of(new TimeLaw.ByItself(5)), Optional.empty());
        List<Handled> with = Stream.of(foods)
                .<Handled>map(food -> new Handled.OfFood(food, Optional.empty(), BigDecimal.ONE))
                .toList();
        return new Step(text, List.of(way), with, after, false, false, parts);
    }

    private static Dish dish(Step... steps) {
        return new Dish("stew", "stew", Dish.Kind.MAIN, 3, true, "", List.of(STEW, NOODLES), List.of(), List.of(steps));
    }

    /** The third step waits for the first and for the noodles; without them it waits for the first, which is then the only one before. */
    @Test
    void a_part_cooked_apart_goes_with_its_steps() {
        Dish all = dish(STEWED, BOIL_APART, step("serve", List.of(1, 2), List.of()));

        Dish rest = LeftOutForAll.of(all, NOODLES).orElseThrow();

        assertThat(rest.parts()).containsExactly(STEW);
        assertThat(rest.steps()).extracting(Step::text).containsExactly("stew", "serve");
        assertThat(rest.steps().get(1).after()).containsExactly(1);
    }

    @Test
    void numbers_of_steps_move_up() {
        Dish all = dish(BOIL_APART, STEWED, step("serve", List.of(1, 2), List.of()));

        assertThat(LeftOutForAll.of(all, NOODLES).orElseThrow().steps().get(1).after())
                .containsExactly(1);
    }

    @Test
    void a_shared_pot_stays_shut() {
        Step together = step("stew with noodles", List.of(), List.of(), MEAT, WHEAT);

        assertThat(LeftOutForAll.of(dish(together), NOODLES)).isEmpty();
        assertThat(LeftOutForAll.of(dish(BOIL_APART, together), NOODLES)).isEmpty();
    }

    @Test
    void what_cannot_be_left_out_stays() {
        assertThat(LeftOutForAll.of(dish(STEWED, BOIL_APART), STEW)).isEmpty();
    }
}
