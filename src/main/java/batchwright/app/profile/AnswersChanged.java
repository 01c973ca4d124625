package batchwright.app.profile;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.app.Workspace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The questions of a profile asked again of somebody who has one: what is answered otherwise changes its own lines and no others. */
public final class AnswersChanged {
    private static final String AVOID = "avoid";
    private static final String NONE = "none";

    private final Workspace workspace;
    private final String eater;
    private final Map<String, String> before = new LinkedHashMap<>();
    private final ProfileAnswers answers;

    /** @param eater one that has a profile */
    public AnswersChanged(Workspace workspace, String eater) {
        this.workspace = workspace;
        this.eater = eater;
        this.answers = new ProfileAnswers(workspace);
        new ChangePage(workspace).writtenOf(eater).forEach((key, value) -> {
            if (ProfileQuestion.list().stream().anyMatch(question -> question.isAnsweredBy(key))) {
                before.put(key, value);
            }
        });
        answers.putAll(before);
    }

    /** As the profile has them. */
    public ProfileAnswers answers() {
        return answers;
    }

    /** @throws batchwright.app.Refused when the profile would not be right with them, or cannot be written */
    public ChangePage.Went write() {
        return new ChangePage(workspace).profile(eater, changes());
    }

    List<KeyChange> changes() {
        Map<String, String> now = answers.all();
        List<KeyChange> changes = new ArrayList<>();
        now.forEach((key, value) -> {
            if (!Objects.equals(before.get(key), value)) {
                changes.add(key.equals(AVOID) ? KeyChange.list(key, names(value)) : KeyChange.text(key, value));
            }
        });
        before.keySet().stream()
                .filter(key -> !now.containsKey(key))
                .map(KeyChange::gone)
                .forEach(changes::add);
        return changes;
    }

    private static List<String> names(String value) {
        return Arrays.stream(value.split(","))
                .map(name -> name.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("\\s+", "_"))
                .filter(name -> !name.isEmpty() && !name.equals(NONE))
                .toList();
    }
}
