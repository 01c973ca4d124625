package batchwright.person;

import batchwright.text.ResourceTable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a profile may say about health, and what a yes comes to: a row of health_questions.csv.
 *
 * @param key as written in a profile
 * @param onlySex the only sex that is asked
 * @param words short, for a list of what was not said
 * @param asks the question in full
 */
public record HealthQuestion(
        String key, HealthGroup group, Optional<Sex> onlySex, String words, String asks, AfterYes afterYes) {
    /**
     * What a yes comes to.
     *
     * @param outcomes by goal
     * @param effects what it changes besides
     * @param source of the outcomes, and whether it was seen
     */
    public record AfterYes(Outcomes outcomes, Set<HealthEffect> effects, Advice advice, String source) {}

    /** By what the weight is to do. */
    public record Outcomes(Outcome lose, Outcome hold, Outcome gain) {}

    /**
     * Words for people.
     *
     * @param why a yes matters
     * @param then what to do where planning goes on
     * @param clinician whom to ask where it does not
     */
    public record Advice(String why, String then, String clinician) {}

    private static final int COLUMNS = 14;
    private static final List<HealthQuestion> ALL =
            ResourceTable.divided(HealthQuestion.class, "health_questions.csv", COLUMNS).stream()
                    .map(HealthQuestion::of)
                    .toList();

    /** In the order in which they are asked, group by group. */
    public static List<HealthQuestion> all() {
        return ALL;
    }

    /** @throws IllegalArgumentException when there is none */
    public static HealthQuestion of(String key) {
        return ALL.stream()
                .filter(question -> question.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("key (" + key + ") must be that of a question."));
    }

    /** Whether it concerns a body of this sex. */
    public boolean concerns(Sex sex) {
        return onlySex.map(sex::equals).orElse(true);
    }

    public boolean has(HealthEffect effect) {
        return afterYes.effects.contains(effect);
    }

    private static HealthQuestion of(List<String> cells) {
        return new HealthQuestion(
                cells.get(0),
                HealthGroup.of(cells.get(1)),
                HealthGroup.sex(cells.get(2)),
                cells.get(3),
                cells.get(4),
                new AfterYes(
                        new Outcomes(Outcome.of(cells.get(5)), Outcome.of(cells.get(6)), Outcome.of(cells.get(7))),
                        effects(cells.get(8)),
                        new Advice(cells.get(9), cells.get(10), cells.get(11)),
                        cells.get(12) + " (" + cells.get(13) + ")"));
    }

    private static Set<HealthEffect> effects(String words) {
        return Arrays.stream(words.split(" "))
                .filter(word -> !word.isEmpty())
                .map(HealthEffect::of)
                .collect(Collectors.toUnmodifiableSet());
    }
}
