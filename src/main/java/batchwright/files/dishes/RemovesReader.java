package batchwright.files.dishes;

import batchwright.files.page.Yaml;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.TakenOff;
import batchwright.text.Written;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the cook takes off the foods of a part, one food a line: {@code chicken_thigh: bone skin}, {@code potato: nothing}. It must be
 * what the refuse of the food counts: otherwise the dish gets less than it needs, or more is bought.
 */
final class RemovesReader {
    private static final String NOTHING = "nothing";
    private static final Pattern BETWEEN = Pattern.compile("[\\s,]+");

    private final List<Ingredient> mix;
    private final Problems problems;

    RemovesReader(List<Ingredient> mix, Problems problems) {
        this.mix = mix;
        this.problems = problems;
    }

    void read(Yaml.Group group) {
        for (Yaml.Entry entry : group.entries()) {
            Optional<Food> food = food(entry.key());
            if (entry.value() instanceof Yaml.Text text) {
                food.ifPresent(f -> check(f, text.written()));
            } else {
                problems.error(entry.value().at(), "this is not what is taken off", "expected bone skin, or nothing");
            }
        }
    }

    private Optional<Food> food(Written name) {
        List<String> names = mix.stream().map(i -> i.food().id()).toList();
        Optional<Food> food = mix.stream()
                .map(Ingredient::food)
                .filter(f -> f.id().equals(name.text()))
                .findFirst();
        if (food.isEmpty()) {
            problems.unknown(
                    name,
                    name.quoted() + " is not in the mix of this part",
                    "expected one of " + String.join(", ", names),
                    names);
        }
        return food;
    }

    private void check(Food food, Written written) {
        Optional<Set<TakenOff>> removed = parts(written);
        Set<TakenOff> counted = EnumSet.noneOf(TakenOff.class);
        food.takenOff().stream().filter(TakenOff::isByChoice).forEach(counted::add);
        boolean said = !food.takenOff().isEmpty() || food.refusePercent().signum() == 0;
        if (said && removed.isPresent() && !removed.get().equals(counted)) {
            problems.error(
                    written,
                    "this part takes off %s, but %s is bought and counted with %s thrown away"
                            .formatted(said(removed.get()), food, said(counted)),
                    "expected %s: %s, or another food".formatted(food, said(counted)));
        }
    }

    private Optional<Set<TakenOff>> parts(Written written) {
        Set<TakenOff> parts = EnumSet.noneOf(TakenOff.class);
        if (written.text().equals(NOTHING)) {
            return Optional.of(parts);
        }
        List<String> known = Stream.of(TakenOff.values())
                .filter(TakenOff::isByChoice)
                .map(TakenOff::id)
                .toList();
        for (String word : BETWEEN.split(written.text(), -1)) {
            if (!known.contains(word)) {
                problems.unknown(
                        written,
                        "there is no part of a food called \"" + word + "\"",
                        "expected " + NOTHING + ", or some of " + String.join(" ", known),
                        known);
                return Optional.empty();
            }
            TakenOff.byId(word).ifPresent(parts::add);
        }
        return Optional.of(parts);
    }

    private static String said(Set<TakenOff> parts) {
        return parts.isEmpty() ? NOTHING : parts.stream().map(TakenOff::id).collect(Collectors.joining(" "));
    }
}
