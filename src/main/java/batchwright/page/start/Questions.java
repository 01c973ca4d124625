package batchwright.page.start;

import batchwright.app.NeedsOfEater;
import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileDraft;
import batchwright.app.ProfileQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.needs.caution.Caution;
import batchwright.report.html.web.CheckPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The answers of somebody new: every one is kept in the draft of the profile as soon as it is right, whatever happens then. */
final class Questions {
    private final ProfileAnswers answers;
    private final ProfileDraft draft;

    Questions(Workspace workspace) {
        answers = new ProfileAnswers(workspace);
        draft = new ProfileDraft(workspace);
        Map<String, String> kept = draft.read();
        ProfileDraft.into(answers, kept);
    }

    ProfileAnswers answers() {
        return answers;
    }

    /** What is asked next; empty when all is answered. */
    Optional<ProfileQuestion> next() {
        Optional<ProfileQuestion> usual = answers.next();
        if (usual.isEmpty() && !answers.missing().isEmpty()) {
            answers.reopenNeeded();
            usual = answers.next();
        }
        return usual.or(this::waitedFor);
    }

    private Optional<ProfileQuestion> waitedFor() {
        try {
            return answers.waitedFor().stream().findFirst();
        } catch (Refused doNotGoTogether) {
            return Optional.empty();
        }
    }

    /** One that is asked of somebody who answered like this. */
    Optional<ProfileQuestion> of(String key) {
        return Stream.concat(answers.questions().stream(), ProfileQuestion.of(key).stream())
                .filter(question -> question.key().equals(key))
                .findFirst();
    }

    /** The last one that was answered; empty when none was. */
    Optional<ProfileQuestion> before(ProfileQuestion question) {
        List<ProfileQuestion> asked = answers.questions().stream()
                .filter(q -> q.when() != ProfileQuestion.When.ON_REQUEST || answers.has(q.key()))
                .filter(q -> !q.key().equals("day") && !q.key().startsWith("health."))
                .toList();
        int at = asked.indexOf(question);
        return at > 0 ? Optional.of(asked.get(at - 1)) : Optional.empty();
    }

    /** What is wrong with the answer; empty when it was taken. */
    List<String> take(ProfileQuestion question, List<String> chosen, String words) {
        List<String> wrong = new AnswerTaken(answers).take(question, chosen, words);
        if (wrong.isEmpty()) {
            draft.keep(answers);
        }
        return wrong;
    }

    /** It was asked and is not said. */
    void leave(ProfileQuestion question) {
        answers.remove(question.key());
        answers.leaveOpen(question.key());
        draft.keep(answers);
    }

    void throwAway() {
        draft.remove();
    }

    boolean isBegun() {
        return draft.isKept();
    }

    List<CheckPage.Line> lines() {
        return AnswerLines.of(answers);
    }

    /** What the answers lead to that one must know, and what does not go together. */
    List<String> cautions() {
        List<String> all = new ArrayList<>();
        try {
            NeedsOfEater.answer(answers).cautions().stream()
                    .filter(Caution::stopsPlanning)
                    .map(Caution::text)
                    .forEach(all::add);
        } catch (Refused together) {
            together.faults().forEach(fault -> all.add(capital(fault.wrong()) + "; " + fault.cure() + "."));
        }
        return all;
    }

    /** @return the short name of the new eater */
    String save(String name) {
        String id = idOf(name);
        answers.save(id, name);
        draft.remove();
        return id;
    }

    /** A name of a file that says the same. */
    private static String idOf(String name) {
        String id = java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFD)
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return id.isEmpty() ? "eater" : id;
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
