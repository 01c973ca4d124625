package batchwright.page.start;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.app.profile.UsualUnits;
import batchwright.needs.safety.DecisionReason;
import batchwright.person.HealthGroup;
import java.util.List;
import java.util.stream.Stream;

/** Puts what was chosen or typed into the answers, or says what is wrong with it and leaves them as they were. */
final class AnswerTaken {
    private static final int ADULT_YEARS = 18;

    private final ProfileAnswers answers;

    AnswerTaken(ProfileAnswers answers) {
        this.answers = answers;
    }

    /** What is wrong with the answer; empty when it was taken. */
    List<String> take(ProfileQuestion question, List<String> chosen, String words) {
        if (question.key().equals(ProfileQuestion.HEALTH)) {
            return takeHealth(chosen);
        }
        String answer = joined(question, chosen, words);
        if (answer.isEmpty()) {
            return List.of(chosen.isEmpty() && words.isEmpty() ? "Choose or enter an answer." : "Choose an answer.");
        }
        if (question.key().equals(ProfileQuestion.AGE) && isTooYoung(answer)) {
            return List.of(DecisionReason.of("under_18").says());
        }
        String before = answers.all().getOrDefault(question.key(), "");
        answers.put(question.key(), new UsualUnits(answers).withUnit(question, answer));
        List<String> wrong = answers.problemsOf(question.key()).stream()
                .map(problem -> capital(problem.wrong()) + "; " + problem.expected() + ".")
                .toList();
        if (!wrong.isEmpty() && before.isEmpty()) {
            answers.remove(question.key());
        } else if (!wrong.isEmpty()) {
            answers.put(question.key(), before);
        }
        return wrong;
    }

    private static String joined(ProfileQuestion question, List<String> chosen, String words) {
        if (question.key().equals("avoid")) {
            String all = String.join(
                    ", ",
                    Stream.concat(chosen.stream(), Stream.of(words))
                            .filter(part -> !part.isEmpty())
                            .toList());
            return all.isEmpty() ? QuestionWords.NONE : all;
        }
        return words.isEmpty() ? String.join(", ", chosen) : words;
    }

    private static boolean isTooYoung(String age) {
        return age.matches("[0-9]{1,2}") && Integer.parseInt(age) < ADULT_YEARS;
    }

    private List<String> takeHealth(List<String> chosen) {
        if (chosen.isEmpty()) {
            return List.of("Tick what applies, or that none does.");
        }
        if (chosen.contains(QuestionWords.NONE) && chosen.size() > 1) {
            return List.of("Tick either what applies, or that none does.");
        }
        answers.remove(ProfileQuestion.HEALTH);
        for (HealthGroup group : answers.openGroups()) {
            answers.put(ProfileQuestion.healthKey(group.key()), chosen.contains(group.key()) ? "yes" : "no");
        }
        return List.of();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
