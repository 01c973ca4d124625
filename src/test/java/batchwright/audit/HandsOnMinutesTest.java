package batchwright.audit;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FilesInMemory;
import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.PlanRequest;
import batchwright.plan.Portion;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.schedule.Schedule;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The minutes that are audited are those of the schedule, though each is added up by itself: random fills of random starter dishes. */
class HandsOnMinutesTest {
    private static final Kitchen KITCHEN =
            KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow();
    private static final int SEEDS = 60;

    static LongStream seeds() {
        return LongStream.range(0, SEEDS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void one_minute_less_is_found(long seed) {
        var random = new Random(seed);
        List<Dish> dishes = new ArrayList<>(KITCHEN.dishes().values());
        Collections.shuffle(dishes, random);
        List<Batch> batches = dishes.subList(0, 1 + random.nextInt(2)).stream()
                .map(dish -> new Batch(dish, List.of(fill(dish, random), fill(dish, random))))
                .toList();
        int hands = Schedule.of(batches, KITCHEN.equipment()).handsOnMinutes();

        assertThat(passes(batches, hands)).as("at most " + hands).isTrue();
        assertThat(passes(batches, hands - 1)).as("at most " + (hands - 1)).isFalse();
    }

    private static Fill fill(Dish dish, Random random) {
        List<Portion> portions = dish.parts().stream()
                .map(part -> new Portion(part, part.optional() && random.nextInt(3) == 0 ? 0 : grams(part, random)))
                .toList();
        return new Fill(Optional.empty(), 1 + random.nextInt(12), portions);
    }

    private static int grams(Part part, Random random) {
        int steps = (part.mostGrams() - part.leastGrams()) / part.stepGrams();
        return part.leastGrams() + part.stepGrams() * random.nextInt(steps + 1);
    }

    private static boolean passes(List<Batch> batches, int most) {
        Kitchen kitchen = KITCHEN.with(KITCHEN.equipment().withHandsOnMinutes(OptionalInt.of(most)));
        var request = new PlanRequest(kitchen, List.of(), 1, Optional.empty(), 3, Duration.ZERO);
        var session = new Session(1, request, List.of(), batches, List.of(), Proof.NONE);
        return Audit.check(new HandsOnMinutes(), Evidence.of(request, session)).passed();
    }
}
