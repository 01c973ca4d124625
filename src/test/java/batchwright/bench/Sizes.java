package batchwright.bench;

import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.files.profile.EaterReader;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Pack;
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
import java.util.Map;
import java.util.Optional;

/** The requests of the benchmark, all made from the starter files. */
final class Sizes {
    private static final String GAINING = "lifter-gaining";
    private static final List<String> EATERS = List.of(GAINING, "parent-holding", "desk-cutting");
    private static final int DAYS = 5;

    private static final StarterFiles FILES = new StarterFiles();
    private static final Kitchen KITCHEN =
            KitchenReader.read(FILES, LocalDate.of(2026, 11, 25)).value().orElseThrow();

    private Sizes() {}

    /** The sizes at which all solvers are compared, by name. */
    static Map<String, PlanRequest> compared() {
        var sizes = new LinkedHashMap<String, PlanRequest>();
        sizes.put("2 days, 5 dishes", dishes(5, 2));
        sizes.put("5 days, 8 dishes", dishes(8, DAYS));
        sizes.put("the demo plan: 5 days, 24 dishes", days(DAYS));
        sizes.put("14 days", days(14));
        sizes.put("28 days", days(28));
        sizes.put("two eaters", eaters(2));
        sizes.put("6 eaters", eaters(6));
        sizes.put("40 dishes", dishes(40, DAYS));
        sizes.put("SR28's snack foods", snacks(Integer.MAX_VALUE));
        return sizes;
    }

    /** How our own search grows: what grows, and the requests by how much of it they have. */
    static Map<String, Map<Integer, PlanRequest>> growing() {
        var growing = new LinkedHashMap<String, Map<Integer, PlanRequest>>();
        growing.put("days", requests(List.of(1, 2, 3, 5, 7, 14, 28), Sizes::days));
        growing.put("dishes", requests(List.of(3, 5, 8, 12, 24, 40), count -> dishes(count, DAYS)));
        growing.put("eaters", requests(List.of(1, 2, 3, 6), Sizes::eaters));
        growing.put("snack foods", requests(List.of(7, 25, 50, 100, 200, 400), Sizes::snacks));
        return growing;
    }

    private static Map<Integer, PlanRequest> requests(
            List<Integer> counts, java.util.function.IntFunction<PlanRequest> maker) {
        var requests = new LinkedHashMap<Integer, PlanRequest>();
        counts.forEach(count -> requests.put(count, maker.apply(count)));
        return requests;
    }

    private static PlanRequest days(int days) {
        return request(KITCHEN, List.of(seat(GAINING, 0)), days);
    }

    /** The starter eaters in turn; from the fourth on they come again. */
    private static PlanRequest eaters(int count) {
        List<Seat> seats = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            seats.add(seat(EATERS.get(k % EATERS.size()), k / EATERS.size()));
        }
        return request(KITCHEN, seats, DAYS);
    }

    /** The first starter dishes; after the last, dishes that end with the last part of another one. */
    private static PlanRequest dishes(int count, int days) {
        List<Dish> starter = List.copyOf(KITCHEN.dishes().values());
        var dishes = new LinkedHashMap<String, Dish>();
        for (int k = 0; k < count; k++) {
            Dish dish = starter.get(k % starter.size());
            Dish made = k < starter.size() ? dish : mixed(dish, starter.get((k + 7) % starter.size()));
            dishes.put(made.id(), made);
        }
        return request(KITCHEN.withDishes(dishes), List.of(seat(GAINING, 0)), days);
    }

    private static Dish mixed(Dish dish, Dish other) {
        Part last = other.parts().get(other.parts().size() - 1);
        List<Part> parts = new ArrayList<>(dish.parts());
        parts.removeIf(part -> part.name().equals(last.name()));
        parts.add(last);
        return new Dish(
                dish.id() + "_with_" + last.name(),
                dish.name() + ", other",
                dish.kind(),
                dish.fridgeDays(),
                dish.freezes(),
                dish.reheat(),
                parts,
                dish.staples(),
                List.of());
    }

    /** So many foods to choose snacks from: those of the starter eater, and then others of SR28, at invented prices. */
    private static PlanRequest snacks(int most) {
        Seat seat = seat(GAINING, 0);
        var wishes = seat.eater().wishes();
        List<Food> offered = new ArrayList<>(wishes.snackFoods().orElseThrow());
        Map<Food, List<Measure>> measures = new LinkedHashMap<>(KITCHEN.measures());
        Map<Food, List<Pack>> packs = new LinkedHashMap<>(KITCHEN.packs());
        Map<String, Food> foods = new LinkedHashMap<>(KITCHEN.foods());
        for (SnackFoods.Offer offer : SnackFoods.all()) {
            if (offered.size() < most) {
                offered.add(offer.food());
                foods.put(offer.food().id(), offer.food());
                measures.put(offer.food(), List.of(offer.measure()));
                packs.put(offer.food(), List.of(offer.pack()));
            }
        }
        Kitchen kitchen = new Kitchen(
                foods,
                measures,
                KITCHEN.yields(),
                packs,
                KITCHEN.dishes(),
                KITCHEN.pantry(),
                KITCHEN.currency(),
                KITCHEN.cookingDay());
        Eater eater = seat.eater()
                .withWishes(wishes.withSnacks(
                        Optional.of(java.util.Set.copyOf(offered)),
                        wishes.snackMeasuresADay(),
                        wishes.snackKindsADay()));
        return request(kitchen, List.of(new Seat(eater, seat.target())), DAYS);
    }

    private static Seat seat(String id, int copy) {
        Eater eater = EaterReader.read(FILES, "profiles/" + id + ".yaml", Optional.of(KITCHEN))
                .value()
                .orElseThrow();
        Eater named = new Eater(
                copy == 0 ? id : id + copy,
                eater.name(),
                eater.body(),
                eater.activity(),
                eater.goal(),
                eater.health(),
                eater.adjustments(),
                eater.wishes(),
                eater.training());
        return new Seat(named, NeedsCalculator.needsOf(named).target().orElseThrow());
    }

    private static PlanRequest request(Kitchen kitchen, List<Seat> seats, int days) {
        return new PlanRequest(
                kitchen, seats, days, Optional.empty(), PlanRequest.USUAL_MOST_DISHES, Duration.ofSeconds(30));
    }
}
