package batchwright.app.newdish;

import batchwright.app.newdish.BatchLine.Mixed;
import batchwright.app.newdish.BatchLine.Seasoning;
import batchwright.text.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The steps that were typed, each with the foods that it names; or plain ones where none were. */
final class StepsProposed {
    /** Words of a food's short name by which nobody means it. */
    private static final Set<String> SAY_NOTHING = Set.of(
            "brown", "white", "red", "green", "yellow", "black", "ground", "whole", "wheat", "dry", "dried", "canned",
            "frozen", "fresh", "crushed", "lean", "firm", "extra", "large", "small", "plain", "greek", "low", "fat",
            "skim");

    private static final List<String> ALL_WORDS = List.of("rest", "everything", "all", "remaining");
    private static final int LEAST_LETTERS = 3;

    private final List<Mixed> foods;
    private final List<Seasoning> seasonings;

    StepsProposed(List<Mixed> foods, List<Seasoning> seasonings) {
        this.foods = foods;
        this.seasonings = seasonings;
    }

    List<StepDraft> of(List<String> typed) {
        return typed.isEmpty() ? plain() : named(typed);
    }

    /** What no step names goes in hand with the first that takes the rest, else the first that heats, else the first. */
    private List<StepDraft> named(List<String> typed) {
        Map<Object, Integer> stepOf = new LinkedHashMap<>();
        int rest = rest(typed);
        foods.forEach(line ->
                stepOf.put(line, first(typed, List.of(line.food().id().split("_", -1)), rest)));
        seasonings.forEach(s ->
                stepOf.put(s, first(typed, List.of(s.name().split(" ", -1)), seasoningStep(typed, rest))));
        List<StepDraft> steps = new ArrayList<>();
        for (int number = 0; number < typed.size(); number++) {
            int n = number;
            steps.add(new StepDraft(
                    typed.get(n),
                    foods.stream()
                            .filter(line -> stepOf.getOrDefault(line, rest) == n)
                            .toList(),
                    seasonings.stream()
                            .filter(s -> stepOf.getOrDefault(s, rest) == n)
                            .toList(),
                    false));
        }
        return steps;
    }

    private static int rest(List<String> typed) {
        for (int number = 0; number < typed.size(); number++) {
            if (Words.of(typed.get(number)).stream().anyMatch(ALL_WORDS::contains)) {
                return number;
            }
        }
        for (int number = 0; number < typed.size(); number++) {
            if (StepWords.of(typed.get(number)).heats()) {
                return number;
            }
        }
        return 0;
    }

    private static int seasoningStep(List<String> typed, int otherwise) {
        for (int number = 0; number < typed.size(); number++) {
            if (Words.of(typed.get(number)).stream().anyMatch(w -> w.startsWith("spice") || w.startsWith("season"))) {
                return number;
            }
        }
        return otherwise;
    }

    /** The first step with a word of a name. */
    private static int first(List<String> typed, List<String> name, int otherwise) {
        List<String> telling = name.stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> word.length() >= LEAST_LETTERS && !SAY_NOTHING.contains(word))
                .toList();
        for (int number = 0; number < typed.size(); number++) {
            List<String> said = Words.of(typed.get(number));
            if (telling.stream().anyMatch(word -> said.stream().anyMatch(other -> Words.areOne(word, other)))) {
                return number;
            }
        }
        return otherwise;
    }

    private List<StepDraft> plain() {
        List<StepDraft> steps = new ArrayList<>();
        List<Mixed> left = new ArrayList<>(foods);
        for (Mixed line : foods) {
            if (StepDraft.isInWater(line)) {
                steps.add(new StepDraft(inWater(line), List.of(line), List.of(), true));
                left.remove(line);
            }
        }
        List<Mixed> inOven =
                left.stream().filter(line -> isCooked(line, "roasted", "baked")).toList();
        if (!inOven.isEmpty()) {
            steps.add(new StepDraft(
                    "Roast the " + names(inOven) + " at 200 C for 30 minutes, until cooked through.",
                    inOven,
                    List.of(),
                    true));
            left.removeAll(inOven);
        }
        List<Mixed> inPan =
                left.stream().filter(line -> isCooked(line, "fried", "grilled")).toList();
        if (!inPan.isEmpty()) {
            steps.add(new StepDraft("Fry the " + names(inPan) + " until cooked through.", inPan, List.of(), true));
            left.removeAll(inPan);
        }
        if (!left.isEmpty() || !seasonings.isEmpty()) {
            steps.add(new StepDraft(last(left), left, seasonings, false));
        }
        return steps;
    }

    private String last(List<Mixed> left) {
        if (left.isEmpty()) {
            return "Season and mix all.";
        }
        return foods.stream().noneMatch(StepsProposed::wantsHeat)
                ? "Mix the " + names(left) + "."
                : "Simmer the " + names(left) + " under a lid for 20 minutes; mix all.";
    }

    /** A dried bean that is not boiled hard makes ill, so the step says it. */
    private static String inWater(Mixed line) {
        String name = line.food().name();
        if (line.cooked().orElseThrow().method().equals("soaked")) {
            return "Pour boiling water over the " + name + " and leave it for 5 minutes.";
        }
        return line.food().group().equals("legume")
                ? "Boil the " + name + " hard for 10 minutes, then simmer 40 minutes until soft; drain."
                : "Boil the " + name + " for 20 minutes, until soft; drain.";
    }

    private static boolean wantsHeat(Mixed line) {
        return line.cooked().isPresent()
                || Set.of("meat", "fish", "egg", "vegetable", "starchy_vegetable")
                        .contains(line.food().group());
    }

    private static boolean isCooked(Mixed line, String... methods) {
        return line.cooked().filter(y -> List.of(methods).contains(y.method())).isPresent();
    }

    private static String names(List<Mixed> lines) {
        return lines.stream().map(line -> line.food().name()).distinct().collect(Collectors.joining(", "));
    }
}
