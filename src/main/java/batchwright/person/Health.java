package batchwright.person;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Answers to questions of health. "Not said" is its own answer, and is not no.
 *
 * @param answers questions that are absent are not answered
 * @param unclear groups in which something applies but it is not said what
 * @param doctorAgrees whether a doctor or dietitian knows the goal and agrees; asked for only where a decision hangs on it
 */
public record Health(Map<HealthQuestion, Answer> answers, Set<HealthGroup> unclear, Answer doctorAgrees) {
    /** The key of {@link #doctorAgrees} in a profile. */
    public static final String DOCTOR_AGREES = "doctor_agrees";

    /** An answer to a question of health. */
    public enum Answer {
        YES,
        /** Yes, and whoever treats the eater knows of the goal and agrees. */
        AGREED,
        NO,
        NOT_SAID
    }

    public static final Health NOT_SAID = new Health(Map.of());

    public Health {
        answers = Map.copyOf(answers);
        unclear = Set.copyOf(unclear);
    }

    public Health(Map<HealthQuestion, Answer> answers) {
        this(answers, Set.of(), Answer.NOT_SAID);
    }

    public Answer answer(HealthQuestion question) {
        return answers.getOrDefault(question, Answer.NOT_SAID);
    }

    public boolean isYes(HealthQuestion question) {
        return answer(question) == Answer.YES || answer(question) == Answer.AGREED;
    }

    /** Questions answered with yes or agreed, in the order in which they are asked. */
    public List<HealthQuestion> yes() {
        return HealthQuestion.all().stream().filter(this::isYes).toList();
    }

    /** Whether a yes has this effect. */
    public boolean has(HealthEffect effect) {
        return yes().stream().anyMatch(question -> question.has(effect));
    }

    public Health with(HealthQuestion question, Answer answer) {
        Map<HealthQuestion, Answer> more = new HashMap<>(answers);
        more.put(question, answer);
        return new Health(more, unclear, doctorAgrees);
    }

    /** No to every question of a group that is not answered yet. */
    public Health withNone(HealthGroup group) {
        Map<HealthQuestion, Answer> more = new HashMap<>(answers);
        group.questions().forEach(question -> more.putIfAbsent(question, Answer.NO));
        return new Health(more, unclear, doctorAgrees);
    }

    /** Something in a group applies; clear when an answer to one of its questions says what, or all are answered. */
    public Health withSome(HealthGroup group) {
        boolean said = group.questions().stream().anyMatch(this::isYes)
                || group.questions().stream().allMatch(answers::containsKey);
        if (said) {
            return this;
        }
        Set<HealthGroup> more = new HashSet<>(unclear);
        more.add(group);
        return new Health(answers, more, doctorAgrees);
    }

    public Health withDoctorAgrees(Answer answer) {
        return new Health(answers, unclear, answer);
    }
}
