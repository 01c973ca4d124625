package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.hazard.Hazard;
import batchwright.needs.caution.Caution;
import batchwright.needs.evidence.Citation;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rules of hazards.csv as cautions, with their sources. */
final class HazardCautions {
    private HazardCautions() {}

    static Caution of(Hazard hazard, String code, Map<String, String> values) {
        var all = new HashMap<>(values);
        hazard.figure().ifPresent(figure -> all.put("figure", figure.toPlainString()));
        return Caution.warn(code, hazard.advice().with(all), source(hazard));
    }

    private static Citation source(Hazard hazard) {
        String mark = hazard.advice().mark();
        return new Citation(hazard.advice().source() + (mark.equals("memory") ? "; from memory" : ""));
    }

    /** What the method of a dish leaves dangerous for everyone; each code ends in the name of the dish. */
    static List<Caution> of(Dish dish) {
        return forEveryone()
                .flatMap(hazard -> caution(hazard, hazard.in(dish), dish.name(), dish.id()).stream())
                .toList();
    }

    /** The same for what an eater eats besides the containers. */
    static List<Caution> ofSnacks(Collection<Food> foods) {
        return forEveryone()
                .flatMap(hazard ->
                        caution(hazard, hazard.in(foods), "What is eaten besides the containers", "snacks").stream())
                .toList();
    }

    private static Stream<Hazard> forEveryone() {
        return Hazard.all().stream()
                .filter(hazard -> hazard.who() == Hazard.Who.EVERYONE)
                .filter(hazard -> hazard.kind() == Hazard.Kind.CAUTION)
                .filter(hazard -> !hazard.signs().isEmpty());
    }

    private static Optional<Caution> caution(Hazard hazard, List<Food> foods, String dish, String id) {
        return foods.isEmpty()
                ? Optional.empty()
                : Optional.of(of(hazard, hazard.code() + "." + id, Map.of("dish", dish, "foods", names(foods))));
    }

    static String names(Collection<Food> foods) {
        return foods.stream().map(Food::name).distinct().collect(Collectors.joining(" and "));
    }
}
