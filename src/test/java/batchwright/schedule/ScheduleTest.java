package batchwright.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.Part;
import batchwright.food.Step;
import batchwright.food.TimeLaw;
import batchwright.food.Way;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Small sessions whose shortest order is found on paper. */
class ScheduleTest {
    private static final Way HANDS = new Way(Optional.empty(), OptionalInt.empty(), 1, List.of(), Optional.empty());

    private static Step step(String text, int minutes, int handsOn, Integer... after) {
        return step(text, minutes, handsOn, Optional.empty(), OptionalInt.empty(), 1, after);
    }

    private static Step burner(int minutes, int handsOn, Integer... after) {
        return step("Simmer.", minutes, handsOn, Optional.of(Appliance.BURNER), OptionalInt.empty(), 1, after);
    }

    private static Step oven(int minutes, int celsius, int shelves, Integer... after) {
        return step("Bake.", minutes, 0, Optional.of(Appliance.OVEN), OptionalInt.of(celsius), shelves, after);
    }

    private static Step step(
            String text,
            int minutes,
            int handsOn,
            Optional<Appliance> on,
            OptionalInt celsius,
            int shelves,
            Integer... after) {
        return forFive(
                text,
                minutes,
                handsOn,
                new Way(on, celsius, shelves, List.of(), Optional.empty()),
                false,
                List.of(after));
    }

    private static Step forFive(String text, int minutes, int handsOn, Way on, boolean fills, List<Integer> after) {
        var way = new Way(
                on.on(), on.celsius(), on.shelves(), List.of(new TimeLaw.ForFive(minutes, handsOn)), Optional.empty());
        return new Step(text, List.of(way), List.of(), after, fills, false, List.of());
    }

    private static Schedule usual(List<Batch> batches) {
        return Schedule.of(batches, Equipment.USUAL);
    }

    private static Step filling(int minutes, Integer... after) {
        return forFive("Fill.", minutes, minutes, HANDS, true, List.of(after));
    }

    private static Batch batch(String id, int containers, Step... steps) {
        var dish = new Dish(id, id, Dish.Kind.MAIN, 3, true, "", List.of(), List.of(), List.of(steps));
        return new Batch(dish, List.of(new Fill(Optional.empty(), containers, List.of())));
    }

    private static PlacedStep of(Schedule schedule, String dish, int number) {
        return schedule.steps().stream()
                .filter(s -> s.dish().id().equals(dish)
                        && s.number().equals(number == 0 ? OptionalInt.empty() : OptionalInt.of(number)))
                .findFirst()
                .orElseThrow();
    }

    /** The pot first: 2 hands on, then 28 alone, in which 20 are chopped; 3 to fill. */
    @Test
    void the_cook_works_while_a_pot_waits() {
        Schedule schedule = usual(List.of(batch("pot", 5, step("Chop.", 20, 20), burner(30, 2), filling(3, 1, 2))));

        assertThat(schedule.minutes()).isEqualTo(33);
        assertThat(schedule.proven()).isTrue();
        assertThat(schedule.handsOnMinutes()).isEqualTo(25);
        assertThat(of(schedule, "pot", 2).handsOnUntil()).isEqualTo(2);
        assertThat(of(schedule, "pot", 1).start()).isBetween(2, 10);
    }

    /** 10 to heat, 30 together; the second is filled after the first. */
    @Test
    void temperatures_within_ten_degrees_share_the_oven() {
        Schedule schedule = usual(List.of(
                batch("a", 5, oven(30, 200, 1), filling(5, 1)), batch("b", 5, oven(30, 210, 1), filling(5, 1))));

        assertThat(schedule.minutes()).isEqualTo(10 + 30 + 5 + 5);
        assertThat(of(schedule, "a", 1).places()).isEqualTo(List.of(1));
        assertThat(of(schedule, "b", 1).places()).isEqualTo(List.of(2));
        assertThat(schedule.settings()).containsExactly(new OvenSetting(0, 200));
    }

    /** 10 to heat, 30, 10 to heat again, 30, then 5 to fill. */
    @Test
    void other_temperatures_wait_for_the_oven_to_change() {
        Schedule schedule = usual(List.of(
                batch("a", 5, oven(30, 200, 1), filling(5, 1)), batch("b", 5, oven(30, 220, 1), filling(5, 1))));

        assertThat(schedule.minutes()).isEqualTo(10 + 30 + 10 + 30 + 5);
        assertThat(schedule.settings()).extracting(OvenSetting::minute).containsExactly(0, 40);
    }

    /** Three trays on two shelves: 10 to heat, 30 and 30, 5 to fill the last. */
    @Test
    void the_oven_holds_no_more_trays_than_shelves() {
        Schedule schedule = usual(List.of(
                batch("a", 5, oven(30, 200, 2), filling(5, 1)), batch("b", 5, oven(30, 200, 1), filling(5, 1))));

        assertThat(schedule.minutes()).isEqualTo(10 + 30 + 30 + 5);
        assertThat(of(schedule, "a", 1).places()).isEqualTo(List.of(1, 2));
    }

    /** Five pots of 20 minutes on four burners. */
    @Test
    void the_fifth_pot_waits_for_a_burner() {
        Schedule schedule = usual(List.of(batch(
                "a",
                5,
                burner(20, 0),
                burner(20, 0),
                burner(20, 0),
                burner(20, 0),
                burner(20, 0),
                filling(1, 1, 2, 3, 4, 5))));

        assertThat(schedule.minutes()).isEqualTo(41);
    }

    @Test
    void a_dish_of_which_no_step_fills_containers_gets_a_minute_for_each() {
        Schedule schedule = usual(List.of(batch("a", 7, burner(20, 0), burner(30, 0))));

        assertThat(schedule.minutes()).isEqualTo(37);
        assertThat(of(schedule, "a", 0).start()).isEqualTo(30);
    }

    /** Hands-on minutes double with ten containers, one tray becomes two; with fifteen, three trays go in two lots. */
    @Test
    void more_containers_take_more_hands_and_trays() {
        Schedule ten = usual(List.of(batch("a", 10, step("Chop.", 10, 10), oven(30, 200, 1, 1), filling(5, 2))));
        Schedule fifteen = usual(List.of(batch("a", 15, step("Chop.", 10, 10), oven(30, 200, 1, 1), filling(5, 2))));

        assertThat(ten.minutes()).isEqualTo(20 + 30 + 10);
        assertThat(of(ten, "a", 2).places()).isEqualTo(List.of(1, 2));
        assertThat(fifteen.minutes()).isEqualTo(30 + 60 + 15);
    }

    @Test
    void fewer_containers_take_as_long_as_five() {
        Schedule schedule = usual(List.of(batch("a", 2, step("Chop.", 10, 10), filling(5, 1))));

        assertThat(schedule.minutes()).isEqualTo(15);
    }

    @Test
    void steps_of_the_evening_before_take_no_time() {
        var soak = new Step(
                "Soak.",
                List.of(new Way(
                        Optional.empty(),
                        OptionalInt.empty(),
                        1,
                        List.of(new TimeLaw.ForFive(600, 5)),
                        Optional.empty())),
                List.of(),
                List.of(),
                false,
                true,
                List.of());
        Schedule schedule = usual(List.of(batch("a", 5, soak, burner(20, 0, 1), filling(5, 2))));

        assertThat(schedule.minutes()).isEqualTo(25);
        assertThat(schedule.steps()).hasSize(2);
    }

    /** 20 and 30 one after another although what stood between them falls away; then 1 to fill. */
    @Test
    void a_step_of_a_part_that_nobody_gets_falls_away() {
        var toast = new Step(
                "Toast.",
                forFive("", 6, 6, HANDS, false, List.of()).ways(),
                List.of(),
                List.of(1),
                false,
                false,
                List.of("nuts"));
        var dish = new Dish(
                "a",
                "a",
                Dish.Kind.MAIN,
                3,
                true,
                "",
                List.of(NUTS),
                List.of(),
                List.of(burner(20, 0), toast, burner(30, 0, 2)));
        Schedule without = usual(List.of(new Batch(dish, List.of(nuts(0)))));
        Schedule with = usual(List.of(new Batch(dish, List.of(nuts(0), nuts(10)))));

        assertThat(without.steps()).extracting(PlacedStep::number).doesNotContain(OptionalInt.of(2));
        assertThat(of(without, "a", 3).start()).isEqualTo(20);
        assertThat(without.minutes()).isEqualTo(51);
        assertThat(with.minutes()).isEqualTo(20 + 6 + 30 + 2);
    }

    private static final Part NUTS = new Part("nuts", true, 5, false, 10, 20, List.of());

    private static Fill nuts(int rawGrams) {
        return new Fill(Optional.empty(), 1, List.of(new Portion(NUTS, rawGrams)));
    }

    @Test
    void a_kitchen_with_one_burner_takes_longer() {
        Equipment u = Equipment.USUAL;
        var one = new Equipment(
                new Equipment.Hob(1, 1.2), u.oven(), u.pots(), u.pans(), u.others(), u.cooks(), u.limits());
        Schedule schedule = Schedule.of(List.of(batch("a", 5, burner(20, 0), burner(20, 0), filling(1, 1, 2))), one);

        assertThat(schedule.minutes()).isEqualTo(41);
    }
}
