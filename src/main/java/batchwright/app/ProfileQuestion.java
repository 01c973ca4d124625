package batchwright.app;

import batchwright.person.Health;
import batchwright.person.HealthEffect;
import batchwright.person.HealthQuestion;
import batchwright.person.Outcome;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * One thing that a profile says, and how to ask for it. The answers are those of a profile's lines.
 *
 * @param key of the profile; of a group group.key
 * @param label short, for a list of answers
 * @param asks the question in full
 * @param example an answer in metric units, and one in those of the United States; may be empty
 * @param unit added to a bare number, in both systems; empty when a number needs none
 * @param when whether it is asked at all
 * @param applies whether it makes sense, given the answers so far
 */
public record ProfileQuestion(
        String key,
        String label,
        String asks,
        Pair example,
        Pair unit,
        When when,
        Predicate<Map<String, String>> applies) {
    /** Metric units, and those of the United States. */
    public record Pair(String metric, String us) {
        static final Pair NONE = new Pair("", "");

        static Pair same(String text) {
            return new Pair(text, text);
        }

        public String of(boolean isUs) {
            return isUs ? us : metric;
        }
    }

    /** When a question is asked. */
    public enum When {
        /** There is no eater without it. */
        NEEDED,
        /** Asked in passing; it may be left out. */
        USUALLY,
        /** Only when the user picks it from the list of answers: it changes little for most people. */
        ON_REQUEST
    }

    /** Answered by a diary of several lines. */
    public static final String DIARY = "diary";
    /** A value of {@code activity}: the level follows from what can be counted. */
    public static final String FACTS = "facts";
    /** Answered for all groups of questions of health at once. */
    public static final String HEALTH = "health";

    public static final String ACTIVITY = "activity";
    public static final String AGE = "age";
    public static final String HEIGHT = "height";

    /** Asked only where an answer of needs waits for it. */
    private static final ProfileQuestion DOCTOR_AGREES = new ProfileQuestion(
            healthKey(Health.DOCTOR_AGREES),
            "a doctor agrees",
            "Has a doctor or dietitian agreed to this goal? Yes or no; Enter leaves it open, and then no plan is made.",
            Pair.NONE,
            Pair.NONE,
            When.ON_REQUEST,
            answers -> true);

    /** The question that a key of a profile answers; empty for a group of questions of health. */
    public static Optional<ProfileQuestion> of(String key) {
        return Stream.concat(Stream.of(DOCTOR_AGREES), list().stream())
                .filter(question -> question.key.equals(key))
                .findFirst();
    }

    /** In the order in which they are asked and written: what changes most comes first. */
    public static List<ProfileQuestion> list() {
        return ProfileQuestions.ALL;
    }

    /** The key of the answer to a question of health, or to a group of them. */
    public static String healthKey(String key) {
        return HEALTH + "." + key;
    }

    public boolean needed() {
        return when == When.NEEDED;
    }

    /** Whether this is its key, or one of its group. */
    public boolean isAnsweredBy(String other) {
        return other.equals(key) || other.startsWith(key + ".");
    }

    static ProfileQuestion of(HealthQuestion question) {
        var outcomes = question.afterYes().outcomes();
        boolean agreed =
                List.of(outcomes.lose(), outcomes.hold(), outcomes.gain()).contains(Outcome.ASK);
        return new ProfileQuestion(
                healthKey(question.key()),
                question.words(),
                question.asks()
                        + (agreed
                                ? " Yes or no; or agreed: yes, and whoever treats you agrees to the goal."
                                : " Yes or no."),
                Pair.NONE,
                Pair.NONE,
                When.USUALLY,
                answers -> "yes".equals(answers.get(healthKey(question.group().key())))
                        && !(question.has(HealthEffect.EATING_THEME)
                                && "yes".equals(answers.get(healthKey("eating_disorder"))))
                        && (question.onlySex().isEmpty() || "female".equals(answers.get("sex"))));
    }
}
