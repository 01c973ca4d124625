package batchwright.cli;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.app.Refused;
import batchwright.report.Fault;
import batchwright.report.Wrapped;
import batchwright.text.Problem;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Asks for what a profile says, one question at a time. A wrong answer is explained in the words that a profile's mistake is, and
 * asked for again; back goes one question back, quit ends.
 */
final class ProfileDialogue {
    private static final Pattern BARE_NUMBER = Pattern.compile("[0-9]+([.][0-9]+)?");
    /** 5 11, 5'11", 5ft 11 */
    private static final Pattern FEET = Pattern.compile("([3-8])\\s*(?:ft|'|\\s)\\s*([0-9]{1,2})\\s*(?:in|\")?");

    private static final Pattern DIARY_LINE = Pattern.compile("(\\S+)[\\s:]\\s*(.+)");

    private final Input input;
    private final Consumer<String> say;
    private final ProfileAnswers answers;
    private final Set<String> asked = new HashSet<>();
    private final Deque<ProfileQuestion> before = new ArrayDeque<>();
    private boolean isUs;

    /** The user wants no more. */
    static final class Quit extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    ProfileDialogue(Input input, Consumer<String> say, ProfileAnswers answers) {
        this.input = input;
        this.say = say;
        this.answers = answers;
    }

    /**
     * Asks until there is an eater and the user is content with the answers.
     *
     * @throws Quit when the user ends it, or no more is typed
     */
    void run() {
        say.accept(
                Wrapped.lines(
                        "Some questions first. Enter alone leaves out what you need not say; back goes one question back, quit ends."));
        askUnits();
        do {
            askAll();
        } while (!isContent() || !isEater());
    }

    /** Each answer may be right, and yet they do not go together. */
    private boolean isEater() {
        try {
            answers.eater();
            return true;
        } catch (Refused refused) {
            refused.faults().forEach(fault -> say.accept(Wrapped.lines(fault.wrong()) + Wrapped.lines(fault.cure())));
            return false;
        }
    }

    /**
     * Offers to save the answers.
     *
     * @return the path of the profile, unless the user wants none
     */
    Optional<String> save() {
        if (!answers.canBeSaved()) {
            say.accept("\nTo keep answers as a profile: init my-kitchen, and then needs --data my-kitchen.\n");
            return Optional.empty();
        }
        while (true) {
            String id = ask("Save this as a profile? A short name such as ada; Enter for no.");
            if (id.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(answers.save(id, id));
            } catch (Refused refused) {
                refused.faults().forEach(fault -> say.accept(fault.text()));
            }
        }
    }

    private void askUnits() {
        while (true) {
            String units = ask("Do you measure in kg and cm (metric), or in lb and ft (us)? Enter: metric.");
            if (units.isEmpty() || units.equals("metric") || units.equals("us")) {
                isUs = units.equals("us");
                return;
            }
            say.accept("Enter metric or us; each answer may have its own unit all the same.\n");
        }
    }

    private void askAll() {
        Optional<ProfileQuestion> next = next();
        while (next.isPresent()) {
            ProfileQuestion question = next.get();
            if (isAnswered(question)) {
                asked.add(question.key());
                before.push(question);
            } else if (!before.isEmpty()) {
                ProfileQuestion last = before.pop();
                asked.remove(last.key());
                answers.remove(last.key());
            }
            next = next();
        }
    }

    /** The first question that was neither asked nor answered by an option. */
    private Optional<ProfileQuestion> next() {
        return answers.questions().stream()
                .filter(question -> !asked.contains(question.key()) && !answers.has(question.key()))
                .findFirst();
    }

    /** Asks one question until the answer is right; false when the user wants to go back. */
    private boolean isAnswered(ProfileQuestion question) {
        if (question.key().equals(ProfileQuestion.DIARY)) {
            return isDiaryFull(question);
        }
        while (true) {
            String answer = ask(question.asks() + " " + hint(question));
            if (answer.equals("back")) {
                return false;
            }
            if (answer.isEmpty() && !question.needed()) {
                return true;
            }
            if (answer.isEmpty()) {
                say.accept("Without it nothing can be worked out.\n");
                continue;
            }
            answers.put(question.key(), withUnit(question, answer));
            if (isRight(question)) {
                return true;
            }
            answers.remove(question.key());
        }
    }

    private boolean isDiaryFull(ProfileQuestion question) {
        Deque<String> lines = new ArrayDeque<>();
        while (true) {
            String line = ask(
                    lines.isEmpty()
                            ? question.asks() + " " + hint(question)
                            : "The next activity and its hours; Enter when the day or the week is full.");
            if (line.equals("back")) {
                if (lines.isEmpty()) {
                    return false;
                }
                answers.remove(lines.pop());
            } else if (!line.isEmpty()) {
                addToDiary(line).ifPresent(lines::push);
            } else if (lines.isEmpty()) {
                say.accept("Nothing is in the diary yet.\n");
            } else if (isRight(question)) {
                return true;
            }
        }
    }

    /** The key of the line, when it can be one. */
    private Optional<String> addToDiary(String line) {
        Matcher parts = DIARY_LINE.matcher(line);
        if (!parts.matches()) {
            say.accept("Enter an activity and a time, such as sleeping 8 h.\n");
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
        explain(wrong);
        answers.remove(key);
        return Optional.empty();
    }

    private boolean isRight(ProfileQuestion question) {
        List<Problem> wrong = answers.problemsOf(question.key());
        explain(wrong);
        return wrong.isEmpty();
    }

    private void explain(List<Problem> wrong) {
        wrong.stream()
                .limit(1)
                .map(Fault::of)
                .forEach(fault -> say.accept(Wrapped.lines(fault.wrong()) + Wrapped.lines(fault.cure())));
    }

    private String hint(ProfileQuestion question) {
        return "Such as " + question.example().of(isUs) + (question.needed() ? "." : "; Enter to leave it out.");
    }

    private String withUnit(ProfileQuestion question, String answer) {
        Matcher feet = FEET.matcher(answer);
        if (isUs && question.key().equals("height") && feet.matches()) {
            return feet.group(1) + " ft " + feet.group(2) + " in";
        }
        return BARE_NUMBER.matcher(answer).matches()
                ? (answer + " " + question.unit().of(isUs)).strip()
                : answer;
    }

    /** Shows the answers; false when one is to be changed. */
    private boolean isContent() {
        List<ProfileQuestion> shown = answers.questions();
        Map<String, String> all = answers.all();
        say.accept("\nYour answers:\n");
        for (int q = 0; q < shown.size(); q++) {
            say.accept("  %2s  %s: %s\n".formatted(q + 1, shown.get(q).label(), answer(shown.get(q), all)));
        }
        while (true) {
            String wish = ask("Enter to go on, or the number of an answer to change.");
            if (wish.isEmpty()) {
                return true;
            }
            if (wish.matches("[0-9]{1,3}") && Integer.parseInt(wish) >= 1 && Integer.parseInt(wish) <= shown.size()) {
                ProfileQuestion question = shown.get(Integer.parseInt(wish) - 1);
                asked.remove(question.key());
                answers.remove(question.key());
                return false;
            }
            say.accept("Enter a number from 1 to " + shown.size() + ".\n");
        }
    }

    private static String answer(ProfileQuestion question, Map<String, String> all) {
        if (question.key().equals(ProfileQuestion.DIARY)) {
            return all.entrySet().stream()
                    .filter(line -> line.getKey().startsWith(ProfileQuestion.DIARY + "."))
                    .map(line -> line.getKey().substring(ProfileQuestion.DIARY.length() + 1) + " " + line.getValue())
                    .reduce((one, other) -> one + ", " + other)
                    .orElse("-");
        }
        return all.getOrDefault(question.key(), "not said");
    }

    private String ask(String question) {
        say.accept("\n" + Wrapped.lines(question) + "> ");
        String answer = input.line().orElseThrow(Quit::new).strip();
        if (answer.equals("quit")) {
            throw new Quit();
        }
        return answer;
    }
}
