package batchwright.files.shop;

import batchwright.files.foods.FoodCells;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.TakenOff;
import batchwright.text.Written;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Compares what is still on a pack (bone, skin, shell ...) with what the refuse of its food counts: a tray with bones bought for a food
 * counted without them would leave the eater short. What is still on is said in the column still_on, or by the words of the shelf.
 */
final class PackRefuse {
    private static final String NOTHING = "none";
    private static final List<TakenOff> BY_WORDS = List.of(TakenOff.BONE, TakenOff.SKIN);
    private static final Pattern TAKEN_AWAY = Pattern.compile("without[^,]*");

    private final Food food;
    private final Problems problems;

    PackRefuse(Food food, Problems problems) {
        this.food = food;
        this.problems = problems;
    }

    /**
     * @param stillOn the cell of that column, which may be empty
     * @param label what the shelf says
     */
    void check(Written stillOn, Written label) {
        if (food.takenOff().isEmpty() && food.refusePercent().signum() > 0) {
            return; // what its refuse is was not said
        }
        if (stillOn.isEmpty()) {
            checkWords(label);
            return;
        }
        Set<TakenOff> on = stillOn.text().equals(NOTHING)
                ? EnumSet.noneOf(TakenOff.class)
                : new FoodCells(problems).takenOff(stillOn);
        for (TakenOff part : TakenOff.values()) {
            if (part.isByChoice() && on.contains(part) != food.takenOff().contains(part)) {
                tell(stillOn, part, on.contains(part));
            }
        }
    }

    /** Of the words only bone and skin are read: others, such as liquid, may belong to the food. */
    private void checkWords(Written label) {
        String text = label.text().toLowerCase(Locale.ROOT);
        for (TakenOff part : BY_WORDS) {
            says(text, part)
                    .filter(on -> on != food.takenOff().contains(part))
                    .filter(on -> !on || !isEaten(part))
                    .ifPresent(on -> tell(label, part, on));
        }
    }

    /** Whether the words say that it is on or off; empty when they say neither. */
    private static Optional<Boolean> says(String text, TakenOff part) {
        int at = text.indexOf(part.id());
        if (at < 0) {
            return Optional.empty();
        }
        String behind = text.substring(at + part.id().length());
        boolean off = behind.startsWith("less") || text.substring(0, at).contains("without ");
        return Optional.of(!off);
    }

    /** A food whose own words name it, not as taken off: pink salmon, canned, with bone and liquid. */
    private boolean isEaten(TakenOff part) {
        String words = TAKEN_AWAY
                .matcher((food.name() + ", " + food.description()).toLowerCase(Locale.ROOT))
                .replaceAll("");
        return words.contains("with " + part.id()) || words.contains("and " + part.id());
    }

    private void tell(Written where, TakenOff part, boolean on) {
        String counted = food.takenOff().isEmpty()
                ? "nothing thrown away"
                : food.takenOff().stream().map(TakenOff::id).collect(Collectors.joining(" and ")) + " thrown away, "
                        + food.refusePercent().stripTrailingZeros().toPlainString() + " %";
        problems.error(
                where,
                on
                        ? "the %s is still on this pack, but %s is counted with %s".formatted(part.id(), food, counted)
                        : "there is no %s on this pack, but %s is counted with %s".formatted(part.id(), food, counted),
                "expected a pack as the food is counted, or another food that is; "
                        + "still_on says what is still on the pack: bone skin, or none");
    }
}
