package batchwright.app.newdish;

import batchwright.app.newdish.BatchLine.Mixed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A part of the new dish.
 *
 * @param usual raw edible grams in one container, as the batch was written
 */
record PartDraft(String name, boolean optional, BigDecimal usual, List<Mixed> mix) {
    static final String REST = "pot";
    private static final Set<String> IN_WATER = Set.of("boiled", "soaked", "rice cooker");
    private static final int LEAST_APART_G = 25;
    private static final int SCALE = 5;
    /** A container holds between these shares of what was written: our choice. */
    private static final BigDecimal LEAST = new BigDecimal("0.6");

    private static final BigDecimal MOST = new BigDecimal("1.4");

    /** What the user put together stays so; a grain that is cooked in water of its own is a part that may be left out; the rest is one pot. */
    static List<PartDraft> of(List<Mixed> lines, BigDecimal containers) {
        Map<String, List<Mixed>> byPart = new LinkedHashMap<>();
        for (Mixed line : lines) {
            String name = line.part().orElse(isApart(line, containers) ? apart(line) : REST);
            byPart.computeIfAbsent(name, n -> new ArrayList<>()).add(line);
        }
        boolean alone = byPart.size() == 1;
        List<PartDraft> parts = new ArrayList<>();
        byPart.forEach((name, mix) -> parts.add(new PartDraft(
                name,
                !alone && mix.stream().allMatch(line -> isApart(line, containers)),
                mix.stream()
                        .map(Mixed::grams)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .divide(containers, 1, RoundingMode.HALF_UP),
                mix)));
        return parts;
    }

    private static boolean isApart(Mixed line, BigDecimal containers) {
        return line.food().group().equals("grain")
                && line.cooked().filter(y -> IN_WATER.contains(y.method())).isPresent()
                && line.grams().divide(containers, 1, RoundingMode.HALF_UP).intValue() >= LEAST_APART_G;
    }

    /** brown_rice: rice */
    private static String apart(Mixed line) {
        String id = line.food().id();
        return id.substring(id.lastIndexOf('_') + 1);
    }

    int least() {
        return Math.max(SCALE, usual.multiply(LEAST).intValue() / SCALE * SCALE);
    }

    int most() {
        return Math.max(least() + SCALE, (usual.multiply(MOST).intValue() + SCALE - 1) / SCALE * SCALE);
    }

    /** What a container holds as written, to the mark of the scale. */
    int middle() {
        return Math.max(least(), Math.min(most(), Math.round(usual.floatValue() / SCALE) * SCALE));
    }
}
