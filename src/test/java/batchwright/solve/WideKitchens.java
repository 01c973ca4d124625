package batchwright.solve;

import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.files.profile.EaterReader;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.needs.NeedsCalculator;
import batchwright.person.Eater;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** Requests from the starter files with very many dishes: after the last starter dish come some that end with a part of another. */
final class WideKitchens {
    private static final StarterFiles FILES = new StarterFiles();
    private static final Kitchen KITCHEN =
            KitchenReader.read(FILES, LocalDate.of(2026, 11, 25)).value().orElseThrow();

    private WideKitchens() {}

    /** Each kitchen holds all dishes of the smaller ones. */
    static PlanRequest request(int dishes, int days, List<String> eaters) {
        List<Dish> starter = List.copyOf(KITCHEN.dishes().values());
        var all = new LinkedHashMap<String, Dish>();
        for (int k = 0; k < dishes; k++) {
            int round = k / starter.size();
            Dish dish = starter.get(k % starter.size());
            Dish made = round == 0 ? dish : mixed(dish, starter.get((k + 7 * round) % starter.size()), k);
            all.put(made.id(), made);
        }
        return new PlanRequest(
                KITCHEN.withDishes(all),
                eaters.stream().map(WideKitchens::seat).toList(),
                days,
                Optional.empty(),
                PlanRequest.USUAL_MOST_DISHES,
                Duration.ofSeconds(30));
    }

    private static Seat seat(String id) {
        Eater eater = EaterReader.read(FILES, "profiles/" + id + ".yaml", Optional.of(KITCHEN))
                .value()
                .orElseThrow();
        return new Seat(eater, NeedsCalculator.needsOf(eater).target().orElseThrow());
    }

    private static Dish mixed(Dish dish, Dish other, int number) {
        Part last = other.parts().get(other.parts().size() - 1);
        List<Part> parts = new ArrayList<>(dish.parts());
        parts.removeIf(part -> part.name().equals(last.name()));
        parts.add(last);
        return new Dish(
                dish.id() + "_" + number,
                dish.name() + " " + number,
                dish.kind(),
                dish.fridgeDays(),
                dish.freezes(),
                dish.reheat(),
                parts,
                dish.staples(),
                List.of());
    }
}
