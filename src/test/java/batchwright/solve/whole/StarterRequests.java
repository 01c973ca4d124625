package batchwright.solve.whole;

import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.files.profile.EaterReader;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.needs.NeedsCalculator;
import batchwright.person.Eater;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.time.Duration;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Plans of the starter files as requests. */
final class StarterRequests {
    private StarterRequests() {}

    static PlanRequest withAllDishes(String eater, int days) {
        var files = new StarterFiles();
        Kitchen kitchen =
                KitchenReader.read(files, LocalDate.of(2026, 11, 25)).value().orElseThrow();
        Eater who = EaterReader.read(files, "profiles/" + eater + ".yaml", Optional.of(kitchen))
                .value()
                .orElseThrow();
        return new PlanRequest(
                kitchen,
                List.of(new Seat(who, NeedsCalculator.needsOf(who).target().orElseThrow())),
                days,
                Optional.empty(),
                PlanRequest.USUAL_MOST_DISHES,
                Duration.ofSeconds(60));
    }

    static PlanRequest withDishes(String eater, int days, Set<String> dishes) {
        PlanRequest request = withAllDishes(eater, days);
        Map<String, Dish> some = new LinkedHashMap<>(request.kitchen().dishes());
        some.keySet().retainAll(dishes);
        return request.withKitchen(request.kitchen().withDishes(some));
    }
}
