package batchwright.app;

import batchwright.files.FolderFiles;
import batchwright.files.ProfilePage;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.Problem;
import batchwright.write.CannotWrite;
import batchwright.write.NewFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An eater in the making: answers to the questions of a profile, from options or from a dialogue. */
public final class ProfileAnswers {
    private static final String NOBODY = "answers";
    private static final String NOBODY_NAME = "You";

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final Map<String, String> byKey = new LinkedHashMap<>();

    /** @throws Refused when a file about foods has an error */
    public ProfileAnswers(Workspace workspace) {
        this.workspace = workspace;
        this.kitchen = workspace.kitchen();
    }

    public void put(String key, String answer) {
        byKey.put(key, answer.strip());
    }

    /** Also those that are only asked because of this one. */
    public void remove(String key) {
        byKey.keySet().removeIf(other -> other.equals(key) || other.startsWith(key + "."));
        List<String> asked = questions().stream().map(ProfileQuestion::key).toList();
        ProfileQuestion.list().stream()
                .map(ProfileQuestion::key)
                .filter(other -> !asked.contains(other))
                .forEach(other -> byKey.keySet().removeIf(k -> k.equals(other) || k.startsWith(other + ".")));
    }

    /** Whether a question, or one of its group, is answered. */
    public boolean has(String key) {
        return byKey.keySet().stream().anyMatch(other -> other.equals(key) || other.startsWith(key + "."));
    }

    /** In the order of the questions. */
    public Map<String, String> all() {
        List<String> keys = new ArrayList<>(byKey.keySet());
        keys.sort(Comparator.comparingInt(ProfileAnswers::place));
        Map<String, String> ordered = new LinkedHashMap<>();
        keys.forEach(key -> ordered.put(key, byKey.getOrDefault(key, "")));
        return ordered;
    }

    private static int place(String key) {
        List<ProfileQuestion> questions = ProfileQuestion.list();
        for (int q = 0; q < questions.size(); q++) {
            String known = questions.get(q).key();
            if (key.equals(known) || key.startsWith(known + ".")) {
                return q;
            }
        }
        return questions.size();
    }

    /** The questions that are asked with these answers, in their order. */
    public List<ProfileQuestion> questions() {
        return ProfileQuestion.list().stream()
                .filter(question -> question.applies().test(byKey))
                .toList();
    }

    /** Needed, asked, and without an answer. */
    public List<ProfileQuestion> missing() {
        return questions().stream()
                .filter(question -> question.needed() && !has(question.key()))
                .toList();
    }

    /** What is wrong with the answer to one question. */
    public List<Problem> problemsOf(String key) {
        return page(NOBODY, NOBODY_NAME).problemsOf(key, kitchen);
    }

    /** @throws Refused when the answers do not make an eater */
    public Eater eater() {
        return workspace.value(page(NOBODY, NOBODY_NAME).read(kitchen));
    }

    /** Whether there is a folder that a profile can be saved in. */
    public boolean canBeSaved() {
        return workspace.files() instanceof FolderFiles;
    }

    /**
     * Finds out before the work whether {@link #save} will do, once there are all answers.
     *
     * @throws Refused when the short name is not right or taken, or nothing can be written
     */
    public void checkCanBeSaved(String id, String name) {
        List<Problem> ofName = page(id, name).problemsOf("eater", kitchen);
        if (!ofName.isEmpty()) {
            throw Refused.by(ofName);
        }
        try {
            new NewFile(profile(id)).tryOut();
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    /**
     * Writes the answers to profiles/ID.yaml, and never over a file that is there.
     *
     * @return the path as the user knows it
     * @throws Refused when the short name is not right or taken, or nothing can be written
     */
    public String save(String id, String name) {
        ProfilePage page = page(id, name);
        workspace.value(page.read(kitchen));
        Path file = profile(id);
        try {
            new NewFile(file).write(page.text());
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
        return file.toString().replace('\\', '/');
    }

    private Path profile(String id) {
        if (!(workspace.files() instanceof FolderFiles folder)) {
            throw Refused.because(
                    "there is no folder of your own to save a profile in",
                    "Write the starter files first, init my-kitchen, and then add --data my-kitchen.");
        }
        return folder.path("profiles/" + id + ".yaml");
    }

    private ProfilePage page(String id, String name) {
        return new ProfilePage(id, name, all());
    }
}
