package batchwright.app.newdish;

import batchwright.app.newdish.BatchLine.Mixed;
import batchwright.app.newdish.BatchLine.Seasoning;
import batchwright.food.Food;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A step of the new dish with what it takes in hand. Minutes of hand work, loads and power are the usual figures of the page on adding a
 * dish (common practice, give or take 40 %); how long it goes on by itself is what the step says.
 *
 * @param free whether it need not wait for the step before it
 */
record StepDraft(String text, List<Mixed> foods, List<Seasoning> seasonings, boolean free) {
    private static final int BURNER_MINUTES = 15;
    private static final int OVEN_MINUTES = 30;
    private static final int SLOW_MINUTES = 240;
    private static final int OVEN_CELSIUS = 200;
    private static final Set<String> CHOPPED = Set.of("vegetable", "fruit", "starchy_vegetable");
    private static final Set<String> CUT = Set.of("meat", "fish");
    private static final Set<String> READY = Set.of("frozen", "canned", "crushed", "paste", "sauce", "juice", "puree");
    private static final Set<String> IN_WATER = Set.of("boiled", "soaked");

    StepWords words() {
        return StepWords.of(text);
    }

    /** Below the text, without the dash and the indent. */
    List<String> lines(List<PartDraft> parts, boolean first) {
        List<String> lines = new ArrayList<>();
        Set<String> with = new LinkedHashSet<>();
        foods.forEach(line -> with.add(named(line, parts)));
        seasonings.forEach(seasoning -> with.add(seasoning.name()));
        if (!with.isEmpty()) {
            lines.add("with: [" + String.join(", ", with) + "]");
        }
        lines.addAll(time(parts));
        if (free && !first) {
            lines.add("after: nothing");
        }
        String optional = optionalPart(parts);
        if (!optional.isEmpty()) {
            lines.add("part: " + optional);
        }
        return lines;
    }

    /** The part whose food alone it handles, where that may be left out. */
    private String optionalPart(List<PartDraft> parts) {
        List<PartDraft> handled = parts.stream()
                .filter(part -> foods.stream().anyMatch(part.mix()::contains))
                .toList();
        return handled.size() == 1 && handled.get(0).optional() && seasonings.isEmpty()
                ? handled.get(0).name()
                : "";
    }

    private static String named(Mixed line, List<PartDraft> parts) {
        List<PartDraft> holding = parts.stream()
                .filter(part ->
                        part.mix().stream().anyMatch(other -> other.food().equals(line.food())))
                .toList();
        return holding.size() < 2
                ? line.food().id()
                : line.food().id() + " in "
                        + holding.stream()
                                .filter(part -> part.mix().contains(line))
                                .findFirst()
                                .map(PartDraft::name)
                                .orElse(holding.get(0).name());
    }

    private List<String> time(List<PartDraft> parts) {
        StepWords words = words();
        List<String> lines = new ArrayList<>();
        if (words.heats()) {
            lines.add("uses: " + words.appliance());
        }
        boolean oven = words.appliance().equals("oven");
        if (oven) {
            lines.add("celsius: " + words.celsius().orElse(OVEN_CELSIUS));
        }
        lines.add(hands(parts));
        String names = foods.stream().map(line -> named(line, parts)).distinct().collect(Collectors.joining(", "));
        if (words.inPan() && !foods.isEmpty()) {
            lines.add("loads: {start: 3, minutes: " + words.minutes().orElse(8) + ", grams: 450, of: [" + names + "]}");
            return lines;
        }
        if (oven && !foods.isEmpty()) {
            lines.add(
                    "loads: {minutes: " + words.minutes().orElse(OVEN_MINUTES) + ", grams: 1500, of: [" + names + "]}");
            return lines;
        }
        if (words.appliance().equals("burner") && !foods.isEmpty()) {
            boolean water = foods.stream().anyMatch(StepDraft::isInWater);
            lines.add("power: {start: 1.5, "
                    + foods.stream()
                            .map(line -> named(line, parts))
                            .distinct()
                            .map(name -> name + ": " + (water ? 18 : 4))
                            .collect(Collectors.joining(", "))
                    + "}");
            lines.add("pot: {litres_per_kg: " + (water ? "4" : "1.5") + ", of: [" + names + "]}");
        }
        int minutes = words.minutes().orElse(usualMinutes(words.appliance()));
        if (minutes > 0) {
            lines.add("by_itself: " + minutes);
        }
        return lines;
    }

    private static int usualMinutes(String appliance) {
        return switch (appliance) {
            case "" -> 0;
            case "oven" -> OVEN_MINUTES;
            case "slow_cooker" -> SLOW_MINUTES;
            default -> BURNER_MINUTES;
        };
    }

    static boolean isInWater(Mixed line) {
        return line.cooked().filter(y -> IN_WATER.contains(y.method())).isPresent();
    }

    private String hands(List<PartDraft> parts) {
        String perKg = foods.stream()
                .filter(line -> minutesPerKg(line.food()) > 0)
                .map(line -> named(line, parts) + ": " + minutesPerKg(line.food()))
                .distinct()
                .map(entry -> ", " + entry)
                .collect(Collectors.joining());
        return "hand_work: {start: " + (perKg.isEmpty() ? 1 : 2) + perKg + "}";
    }

    private static int minutesPerKg(Food food) {
        String id = food.id().toLowerCase(Locale.ROOT);
        if (id.equals("garlic")) {
            return 75;
        }
        if (READY.stream().anyMatch(id::contains)) {
            return 0;
        }
        return CHOPPED.contains(food.group()) ? 8 : CUT.contains(food.group()) && !id.startsWith("ground_") ? 5 : 0;
    }
}
