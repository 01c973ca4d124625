package batchwright.app;

import batchwright.write.CannotWrite;
import batchwright.write.OwnFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Answers that are not a profile yet, kept beside the profiles while they are given: a line "key: answer" each, without an answer
 * where the user did not say. Without a folder of one's own nothing is kept.
 */
public final class ProfileDraft {
    private static final String NAME = "profiles/draft.txt";
    private static final String HEAD =
            "# Unfinished answers: the questions go on from here, and this file is removed at the end.\n";
    private static final String COLON = ":";

    private final Optional<Path> file;
    private final Optional<OwnFile> own;
    private boolean writable = true;

    public ProfileDraft(Workspace workspace) {
        this.file = workspace.source().folder().map(own -> own.resolve(NAME));
        this.own = file.map(path -> new OwnFile(path, HEAD));
    }

    /** Where answers are kept, as the user knows it; empty when they are not. */
    public Optional<String> path() {
        return file.filter(path -> writable).map(path -> path.toString().replace('\\', '/'));
    }

    /** Whether anything is kept. */
    public boolean isKept() {
        return own.filter(OwnFile::isThere).isPresent();
    }

    /** Answers by key, empty where something was left open; none when there is no draft. */
    public Map<String, String> read() {
        Map<String, String> answers = new LinkedHashMap<>();
        if (isKept()) {
            try {
                Files.readAllLines(file.orElseThrow(), StandardCharsets.UTF_8).stream()
                        .filter(line -> !line.startsWith("#") && line.contains(COLON))
                        .forEach(line -> answers.put(
                                line.substring(0, line.indexOf(COLON)).strip(),
                                line.substring(line.indexOf(COLON) + 1).strip()));
            } catch (IOException unreadable) {
                answers.clear();
            }
        }
        return answers;
    }

    /** Puts a draft into answers; what they hold already stays. */
    public static void into(ProfileAnswers answers, Map<String, String> draft) {
        draft.forEach((key, answer) -> {
            if (answer.isEmpty()) {
                answers.leaveOpen(key);
            } else if (!answers.all().containsKey(key)) {
                answers.put(key, answer);
            }
        });
    }

    /** Keeps the answers so far; where that is not possible, they are asked for all the same. */
    public void keep(ProfileAnswers answers) {
        if (path().isEmpty()) {
            return;
        }
        var text = new StringBuilder();
        answers.all().forEach((key, answer) -> text.append(key + COLON + " " + answer + "\n"));
        answers.leftOpen().forEach(key -> text.append(key + COLON + "\n"));
        try {
            own.orElseThrow().write(text.toString());
        } catch (CannotWrite cannot) {
            writable = false;
        }
    }

    /** The answers are a profile now, or nobody wants them. */
    public void remove() {
        try {
            if (own.isPresent()) {
                own.get().remove();
            }
        } catch (CannotWrite stays) {
            writable = false;
        }
    }
}
