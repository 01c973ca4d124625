package batchwright.cli;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileDraft;
import batchwright.app.ProfileQuestion;
import batchwright.app.Refused;
import batchwright.app.profile.UsualUnits;
import batchwright.needs.safety.DecisionReason;
import batchwright.text.Problem;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Asks for what a profile says, one question at a time, and keeps the answers in a draft as it goes. A wrong answer is explained in
 * the words that a profile's mistake is, and asked for again; back goes one question back, quit ends.
 */
final class ProfileDialogue {
    private static final BigDecimal ADULT_YEARS = BigDecimal.valueOf(18);
    /** No names, but answers to the question whether to save. */
    private static final Set<String> NO_NAMES = Set.of("yes", "y", "no", "n");

    private final Asking asking;
    private final Consumer<String> say;
    private final ProfileAnswers answers;
    private final ProfileDraft draft;
    private final Deque<ProfileQuestion> before = new ArrayDeque<>();
    private boolean mayBeLeftOpen = true;

    ProfileDialogue(Input input, Consumer<String> say, ProfileAnswers answers, ProfileDraft draft) {
        this.asking = new Asking(input, say);
        this.say = say;
        this.answers = answers;
        this.draft = draft;
    }

    /**
     * Asks until there is an eater and the user is content with the answers.
     *
     * @throws Asking.Quit when the user ends it, or no more is typed
     */
    void run() {
        asking.say("About ten questions. Enter alone leaves one out; back goes one question back, quit ends"
                + (draft.path().isPresent() ? " and keeps what was said." : "."));
        goOn();
        do {
            askAll();
        } while (!isContent() || !isEater());
        askWaitedFor();
    }

    /** What the answer would otherwise stop for. */
    private void askWaitedFor() {
        List<ProfileQuestion> open = answers.waitedFor();
        while (!open.isEmpty()) {
            ProfileQuestion question = open.get(0);
            if (!isOneAnswered(question)) {
                answers.leaveOpen(question.key());
            }
            askOpen();
            open = isEater() ? answers.waitedFor() : List.of();
        }
    }

    /** Offers an earlier draft. */
    private void goOn() {
        Map<String, String> kept = draft.read();
        if (kept.isEmpty()) {
            return;
        }
        while (true) {
            String wish = asking.ask("There are unfinished answers in "
                    + draft.path().orElse("a draft") + ". Enter to go on with them; new to start again.");
            if (wish.equals("new")) {
                draft.remove();
                return;
            }
            if (wish.isEmpty()) {
                ProfileDraft.into(answers, kept);
                answers.questions().stream()
                        .filter(question -> kept.keySet().stream().anyMatch(question::isAnsweredBy))
                        .forEach(before::push);
                return;
            }
        }
    }

    /** Each answer may be right, and yet they may not go together. */
    private boolean isEater() {
        try {
            answers.eater();
            return true;
        } catch (Refused refused) {
            refused.faults().forEach(asking::explain);
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
            asking.gap();
            asking.say("To keep answers as a profile: init my-kitchen, and then needs --data my-kitchen.");
            return Optional.empty();
        }
        while (true) {
            String id = asking.ask("Save this as a profile? A short name such as ada; Enter for no.");
            if (id.isEmpty()) {
                return Optional.empty();
            }
            if (NO_NAMES.contains(id.toLowerCase(Locale.ROOT))) {
                asking.say("Enter a name to save it, such as ada; or only Enter not to.");
                continue;
            }
            try {
                return Optional.of(answers.save(id, id));
            } catch (Refused refused) {
                refused.faults().forEach(fault -> say.accept(fault.text()));
            }
        }
    }

    /** What is needed and was left out is asked for once more, and then must be answered. */
    private void askAll() {
        askOpen();
        mayBeLeftOpen = false;
        while (!answers.missing().isEmpty()) {
            answers.reopenNeeded();
            askOpen();
        }
        mayBeLeftOpen = true;
    }

    private void askOpen() {
        Optional<ProfileQuestion> next = answers.next();
        while (next.isPresent()) {
            ask(next.get());
            draft.keep(answers);
            next = answers.next();
        }
    }

    private void ask(ProfileQuestion question) {
        if (isAnswered(question)) {
            before.push(question);
        } else if (!before.isEmpty()) {
            answers.remove(before.pop().key());
        }
    }

    /** Asks one question until the answer is right; false when the user wants to go back. */
    private boolean isAnswered(ProfileQuestion question) {
        return switch (question.key()) {
            case ProfileQuestion.DIARY -> new DiaryDialogue(asking, answers).isFull(question);
            case ProfileQuestion.HEALTH -> new HealthDialogue(asking, answers).isAnswered(question);
            default -> isOneAnswered(question);
        };
    }

    private boolean isOneAnswered(ProfileQuestion question) {
        while (true) {
            String answer = asking.ask((question.asks() + " " + new UsualUnits(answers).hint(question)).strip());
            if (answer.equals("back")) {
                return false;
            }
            if (answer.isEmpty() && (mayBeLeftOpen || !question.needed())) {
                answers.leaveOpen(question.key());
                return true;
            }
            if (answer.isEmpty()) {
                asking.say("Without it nothing can be worked out.");
                continue;
            }
            answers.put(question.key(), new UsualUnits(answers).withUnit(question, answer));
            List<Problem> wrong = answers.problemsOf(question.key());
            asking.explain(wrong);
            if (wrong.isEmpty()) {
                sayTooYoung(question, answer);
                return true;
            }
            answers.remove(question.key());
        }
    }

    /** At once, before more is asked of somebody who gets no figures. */
    private void sayTooYoung(ProfileQuestion question, String answer) {
        if (question.key().equals(ProfileQuestion.AGE) && new BigDecimal(answer).compareTo(ADULT_YEARS) < 0) {
            asking.say(DecisionReason.of("under_18").says() + " Type back if the age is wrong, else quit.");
        }
    }

    /** Shows the answers; false when one is to be changed. */
    private boolean isContent() {
        List<ProfileQuestion> shown = answers.questions();
        asking.gap();
        asking.say("Your answers:");
        for (int q = 0; q < shown.size(); q++) {
            asking.item(q + 1, shown.get(q).label() + ": " + answers.said(shown.get(q)));
        }
        while (true) {
            String wish = asking.ask("Enter to go on, or the number of an answer to change.");
            if (wish.isEmpty()) {
                return true;
            }
            if (wish.matches("[0-9]{1,3}") && Integer.parseInt(wish) >= 1 && Integer.parseInt(wish) <= shown.size()) {
                ProfileQuestion question = shown.get(Integer.parseInt(wish) - 1);
                answers.remove(question.key());
                ask(question);
                draft.keep(answers);
                return false;
            }
            asking.say("Enter a number from 1 to " + shown.size() + ".");
        }
    }
}
