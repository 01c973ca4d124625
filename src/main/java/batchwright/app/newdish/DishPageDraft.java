package batchwright.app.newdish;

import batchwright.app.newdish.BatchLine.Mixed;
import batchwright.app.newdish.BatchLine.Seasoning;
import batchwright.files.page.WrittenValue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The file of a new dish, line by line. */
record DishPageDraft(
        String id,
        TypedDish typed,
        BigDecimal containers,
        ShelfLife keeping,
        List<PartDraft> parts,
        List<Seasoning> seasonings,
        List<StepDraft> steps) {
    private static final BigDecimal LEAST_GRAMS = new BigDecimal("0.1");

    String text() {
        List<String> lines = new ArrayList<>();
        lines.add("# Made from a batch of " + containers + " containers. Change what you like; a check names slips.");
        lines.add("dish: " + id);
        lines.add("name: " + WrittenValue.of(typed.name()));
        lines.add("kind: " + (typed.kind().isEmpty() ? "main" : typed.kind()));
        lines.add("fridge_days: " + (typed.fridgeDays().isEmpty() ? keeping.days() : typed.fridgeDays()));
        lines.add("freezes: " + (typed.freezes().isEmpty() ? yesNo(keeping.freezes()) : typed.freezes()));
        lines.add("reheat: \"" + reheat() + "\"");
        lines.add("parts:");
        parts.forEach(part -> lines.addAll(part(part)));
        if (!seasonings.isEmpty()) {
            lines.add("staples: " + seasonings.stream().map(this::staple).collect(Collectors.joining(", ", "[", "]")));
        }
        lines.add("steps:");
        for (int number = 0; number < steps.size(); number++) {
            StepDraft step = steps.get(number);
            lines.add("  - do: " + quoted(step.text()));
            step.lines(parts, number == 0).forEach(line -> lines.add("    " + line));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "/").replace("\"", "'") + "\"";
    }

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    private String reheat() {
        return steps.stream().anyMatch(step -> step.words().heats())
                ? "Microwave covered with a spoon of water, stir half way, until steaming, 74 C (165 F) inside."
                : "Eat cold, straight from the fridge.";
    }

    private List<String> part(PartDraft part) {
        List<String> lines = new ArrayList<>();
        lines.add("  - part: " + part.name());
        if (part.optional()) {
            lines.add("    optional: yes");
        }
        lines.add("    least: " + part.least() + " g");
        lines.add("    most: " + part.most() + " g");
        lines.add("    mix:");
        Map<String, List<Mixed>> byFood = new LinkedHashMap<>();
        part.mix()
                .forEach(line -> byFood.computeIfAbsent(line.food().id(), f -> new ArrayList<>())
                        .add(line));
        byFood.forEach((food, same) -> lines.add("      " + food + ": "
                + each(same.stream().map(Mixed::grams).reduce(BigDecimal.ZERO, BigDecimal::add))
                        .max(LEAST_GRAMS)
                        .toPlainString()
                + " g" + same.get(0).cooked().map(y -> ", " + y.method()).orElse("")));
        return lines;
    }

    /** In one container, to a tenth of a gram. */
    private BigDecimal each(BigDecimal grams) {
        BigDecimal one = grams.divide(containers, 1, RoundingMode.HALF_UP).stripTrailingZeros();
        return one.scale() < 0 ? one.setScale(0) : one;
    }

    private String staple(Seasoning seasoning) {
        return seasoning.name()
                + seasoning
                        .grams()
                        .map(this::each)
                        .filter(grams -> grams.signum() > 0)
                        .map(grams -> " " + grams.toPlainString() + " g")
                        .orElse("");
    }
}
