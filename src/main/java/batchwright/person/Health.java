package batchwright.person;

import java.util.EnumMap;
import java.util.Map;

/**
 * Plain yes/no answers that decide whether this program may plan at all. "Not said" is its own answer.
 *
 * @param answers questions that are absent are not answered
 */
public record Health(Map<HealthQuestion, Answer> answers) {
    /** An answer to a question of health. */
    public enum Answer {
        YES,
        NO,
        NOT_SAID
    }

    public static final Health NOT_SAID = new Health(Map.of());

    public Health {
        answers = Map.copyOf(answers);
    }

    public Answer answer(HealthQuestion question) {
        return answers.getOrDefault(question, Answer.NOT_SAID);
    }

    public boolean isYes(HealthQuestion question) {
        return answer(question) == Answer.YES;
    }

    public Health with(HealthQuestion question, Answer answer) {
        var more = new EnumMap<HealthQuestion, Answer>(HealthQuestion.class);
        more.putAll(answers);
        more.put(question, answer);
        return new Health(more);
    }
}
