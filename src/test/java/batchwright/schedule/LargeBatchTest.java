package batchwright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FilesInMemory;
import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.Kitchen;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Thirty and sixty boxes of starter dishes, in usual and other kitchens; minutes of single steps on paper from docs/science.md. */
class LargeBatchTest {
    private static final Kitchen KITCHEN =
            KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow();
    private static final Equipment USUAL = Equipment.USUAL;

    /** Filled as the recipe is written, as far as the steps of the scale allow. */
    static Batch batch(String id, int containers) {
        Dish dish = Objects.requireNonNull(KITCHEN.dishes().get(id));
        List<Portion> portions = dish.parts().stream()
                .map(part -> new Portion(
                        part,
                        Math.max(
                                part.leastGrams(),
                                Math.min(
                                        part.mostGrams(),
                                        part.writtenGrams().intValue() / part.stepGrams() * part.stepGrams()))))
                .toList();
        return new Batch(dish, List.of(new Fill(Optional.empty(), containers, portions)));
    }

    static Equipment with(int burners, int cooks, BigDecimal... pans) {
        return new Equipment(
                new Equipment.Hob(burners, USUAL.hob().kilowatts()),
                USUAL.oven(),
                USUAL.pots(),
                List.of(pans),
                USUAL.others(),
                cooks,
                USUAL.limits());
    }

    static PlacedStep step(Schedule schedule, int number) {
        return schedule.steps().stream()
                .filter(s -> s.number().orElse(0) == number)
                .findFirst()
                .orElseThrow();
    }

    private static Schedule thirty(Equipment equipment) {
        return Schedule.of(List.of(batch("peanut_stew", 30)), equipment);
    }

    /**
     * 3.6 kg of chicken, trimmed by hand, then 7 loads of at most 550 g; in two pans four rounds of 11
     * minutes, 3 to heat the pan, 1 between rounds: 50. In one pan seven rounds: 86. What proportion would say: 72 and more.
     */
    @Test
    void browning_goes_by_loads_and_a_second_pan_halves_it() {
        PlacedStep two = step(thirty(USUAL), 1);
        PlacedStep one = step(thirty(with(4, 1, Equipment.USUAL_PAN)), 1);

        assertThat(two.task().work().loads().orElseThrow()).isEqualTo(new StepWork.Loads("pan", 7, 2, 512));
        assertThat(one.task().work().loads().orElseThrow().atOnce()).isEqualTo(1);
        assertThat(one.minutes() - two.minutes()).isEqualTo(86 - 50);
    }

    /** 1.35 kg of onions at 16 minutes a kg and kilowatt, 1.2 kW, 5 to begin with: 23 minutes by themselves (by the book 1 kg 15-20, 2 kg 25-35). */
    @Test
    void onions_soften_by_themselves_as_fast_as_the_burner_heats() {
        PlacedStep onions = step(thirty(USUAL), 2);

        assertThat(onions.minutes() - onions.handsOnMinutes()).isBetween(22, 24);
    }

    /** 2.4 kg of rice: 1.5 + 10 x 2.4 / 1.2 to the boil and 28 by itself, whatever the amount; as long as for five boxes but for the heat. */
    @Test
    void rice_boils_by_itself() {
        PlacedStep rice = step(thirty(USUAL), 5);

        assertThat(rice.minutes() - rice.handsOnMinutes()).isBetween(49, 50);
    }

    @Test
    void most_of_thirty_boxes_is_no_longer_hands_on_in_proportion() {
        Schedule five = Schedule.of(List.of(batch("peanut_stew", 5)), USUAL);
        Schedule thirty = thirty(USUAL);

        assertThat(thirty.handsOnMinutes()).isLessThan(4 * five.handsOnMinutes());
        assertThat(thirty.handsOnMinutes()).isLessThan(thirty.minutes() * 3 / 4);
    }

    /** Rice is in its boxes within an hour, the stew within two. */
    @Test
    void nothing_of_thirty_boxes_stands_too_long() {
        Schedule thirty = thirty(USUAL);
        int filled = filled(thirty);

        assertThat(thirty.standing()).isEmpty();
        assertThat(filled - step(thirty, 5).end()).isLessThanOrEqualTo(60);
        assertThat(filled - step(thirty, 4).end()).isLessThanOrEqualTo(120);
    }

    /** 1 + 60 x (0.4 + 3 x 0.4) minutes of filling alone are longer than rice may stand. */
    @Test
    void what_no_order_can_keep_is_said() {
        Schedule sixty = Schedule.of(List.of(batch("peanut_stew", 60)), USUAL);

        assertThat(sixty.standing()).anySatisfy(stands -> {
            assertThat(stands.step()).isEqualTo(5);
            assertThat(stands.minutes()).isGreaterThanOrEqualTo(97);
            assertThat(stands.most()).isEqualTo(60);
        });
    }

    @Test
    void one_burner_takes_longer_and_two_cooks_take_less() {
        List<Batch> both = List.of(batch("lentil_ragu", 5), batch("greek_chicken_bowl", 5));
        int usual = Schedule.of(both, USUAL).minutes();

        assertThat(Schedule.of(both, with(1, 1, Equipment.USUAL_PAN)).minutes()).isGreaterThan(usual);
        assertThat(Schedule.of(both, with(4, 2, Equipment.USUAL_PAN, Equipment.USUAL_PAN))
                        .minutes())
                .isLessThan(usual);
    }

    /** A rice cooker takes the rice off the burners. */
    @Test
    void a_rice_cooker_is_used_by_who_has_one() {
        var cooker = new Equipment(
                USUAL.hob(),
                USUAL.oven(),
                USUAL.pots(),
                USUAL.pans(),
                Map.of(Appliance.RICE_COOKER, new BigDecimal("1.8")),
                1,
                USUAL.limits());

        assertThat(step(Schedule.of(List.of(batch("peanut_stew", 5)), cooker), 5)
                        .on())
                .contains(Appliance.RICE_COOKER);
    }

    private static int filled(Schedule schedule) {
        return schedule.steps().stream()
                .filter(s -> s.text().startsWith("Fill "))
                .findFirst()
                .orElseThrow()
                .end();
    }
}
