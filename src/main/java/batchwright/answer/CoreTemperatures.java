package batchwright.answer;

import batchwright.food.CoreTemperature;
import batchwright.food.Food;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** How hot the raw meat, fish and egg among some foods must get inside, by temperature. */
public record CoreTemperatures(Map<CoreTemperature, Set<Food>> foods) {
    public static CoreTemperatures of(Collection<Food> foods) {
        var found = new EnumMap<CoreTemperature, Set<Food>>(CoreTemperature.class);
        foods.forEach(food -> CoreTemperature.of(food)
                .ifPresent(least ->
                        found.computeIfAbsent(least, l -> new LinkedHashSet<>()).add(food)));
        return new CoreTemperatures(found);
    }

    public boolean holdsAny(CoreTemperature... looked) {
        return List.of(looked).stream().anyMatch(foods::containsKey);
    }

    /** Such as: Least temperature inside - chicken breast: 74 C (165 F). Empty when there is nothing to say. */
    public Optional<String> says() {
        if (foods.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("Least temperature inside - "
                + foods.entrySet().stream()
                        .map(entry -> names(entry.getValue()) + ": " + says(entry.getKey()))
                        .collect(Collectors.joining("; "))
                + ".");
    }

    private static String names(Set<Food> foods) {
        return foods.stream().map(Food::name).collect(Collectors.joining(" and "));
    }

    private static String says(CoreTemperature least) {
        return least.celsius() + " C (" + least.fahrenheit() + " F)"
                + (least.restMinutes() > 0 ? ", then rest " + least.restMinutes() + " minutes" : "");
    }
}
