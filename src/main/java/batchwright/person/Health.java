package batchwright.person;

import java.util.EnumMap;
import java.util.Map;

/**
 * Plain yes/no answers that decide whether this program may plan at all. "Not said" is its own answer.
 *
 * @param answers questions that are absent are not answered
 * @param facts likewise, of what is asked for in some cases only
 */
public record Health(Map<HealthQuestion, Answer> answers, Map<AskedFact, Answer> facts) {
    /** An answer to a question of health. */
    public enum Answer {
        YES,
        NO,
        NOT_SAID
    }

    public static final Health NOT_SAID = new Health(Map.of());

    public Health {
        answers = Map.copyOf(answers);
        facts = Map.copyOf(facts);
    }

    /** Without any of the facts. */
    public Health(Map<HealthQuestion, Answer> answers) {
        this(answers, Map.of());
    }

    public Answer answer(HealthQuestion question) {
        return answers.getOrDefault(question, Answer.NOT_SAID);
    }

    public Answer answer(AskedFact fact) {
        return facts.getOrDefault(fact, Answer.NOT_SAID);
    }

    public boolean isYes(HealthQuestion question) {
        return answer(question) == Answer.YES;
    }

    public Health with(HealthQuestion question, Answer answer) {
        var more = new EnumMap<HealthQuestion, Answer>(HealthQuestion.class);
        more.putAll(answers);
        more.put(question, answer);
        return new Health(more, facts);
    }

    public Health with(AskedFact fact, Answer answer) {
        var more = new EnumMap<AskedFact, Answer>(AskedFact.class);
        more.putAll(facts);
        more.put(fact, answer);
        return new Health(answers, more);
    }
}
