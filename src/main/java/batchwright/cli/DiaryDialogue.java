package batchwright.cli;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.text.Problem;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks for a diary, one activity after the other, until a day or a week is full. */
final class DiaryDialogue {
    private static final Pattern LINE = Pattern.compile("(\\S+)[\\s:]\\s*(.+)");

    private final Asking asking;
    private final ProfileAnswers answers;

    DiaryDialogue(Asking asking, ProfileAnswers answers) {
        this.asking = asking;
        this.answers = answers;
    }

    /** False when the user wants to go back. */
    boolean isFull(ProfileQuestion question) {
        Deque<String> lines = new ArrayDeque<>();
        while (true) {
            String line = asking.ask(
                    lines.isEmpty()
                            ? question.asks() + " Such as " + question.example().metric() + "."
                            : "The next activity and its hours; Enter when the day or the week is full.");
            if (line.equals("back")) {
                if (lines.isEmpty()) {
                    return false;
                }
                answers.remove(lines.pop());
            } else if (!line.isEmpty()) {
                add(line).ifPresent(lines::push);
            } else if (lines.isEmpty()) {
                asking.say("Nothing is in the diary yet.");
            } else {
                List<Problem> wrong = answers.problemsOf(question.key());
                asking.explain(wrong);
                if (wrong.isEmpty()) {
                    return true;
                }
            }
        }
    }

    /** The key of the line, when it can be one. */
    private Optional<String> add(String line) {
        Matcher parts = LINE.matcher(line);
        if (!parts.matches()) {
            asking.say("Enter an activity and a time, such as sleeping 8 h.");
            return Optional.empty();
        }
        String key = ProfileQuestion.DIARY + "." + parts.group(1);
        answers.put(key, parts.group(2));
        List<Problem> wrong = answers.problemsOf(key).stream()
                .filter(problem -> !problem.wrong().startsWith("the diary "))
                .toList();
        if (wrong.isEmpty()) {
            return Optional.of(key);
        }
        asking.explain(wrong);
        answers.remove(key);
        return Optional.empty();
    }
}
