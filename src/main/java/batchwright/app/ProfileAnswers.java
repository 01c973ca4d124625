package batchwright.app;

import batchwright.files.profile.ProfilePage;
import batchwright.food.Kitchen;
import batchwright.needs.caution.Caution;
import batchwright.person.Eater;
import batchwright.person.HealthGroup;
import batchwright.person.Sex;
import batchwright.person.UsualDay;
import batchwright.text.Problem;
import batchwright.write.CannotWrite;
import batchwright.write.NewFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** An eater in the making: answers to the questions of a profile, from options or from a dialogue. */
public final class ProfileAnswers {
    private static final String NOBODY = "answers";
    private static final String NOBODY_NAME = "You";
    private static final String NONE = "none";
    private static final Set<String> FACTS = Set.of("day", "steps", "walking", "training");
    private static final String NOT_SAID = "not said";

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final Map<String, String> byKey = new LinkedHashMap<>();
    private final Set<String> leftOpen = new LinkedHashSet<>();

    /** @throws Refused when a file about foods has an error */
    public ProfileAnswers(Workspace workspace) {
        this.workspace = workspace;
        this.kitchen = workspace.kitchen();
    }

    /** What fills the day stands for its own key: the level follows from it. */
    public void put(String key, String answer) {
        leftOpen.remove(key);
        if (key.equals(ProfileQuestion.ACTIVITY) && UsualDay.of(answer.strip()).isPresent()) {
            byKey.put(key, ProfileQuestion.FACTS);
            byKey.put("day", answer.strip());
        } else {
            byKey.put(key, answer.strip());
        }
    }

    /**
     * Answers that were written down together. Health "none" is a no to all groups of questions; who counts steps, walking or training
     * need not add that activity follows from these.
     */
    public void putAll(Map<String, String> said) {
        if (!said.containsKey(ProfileQuestion.ACTIVITY)) {
            impliedActivity(said.keySet()).ifPresent(activity -> put(ProfileQuestion.ACTIVITY, activity));
        }
        if (NONE.equals(said.get(ProfileQuestion.HEALTH))) {
            HealthGroup.all().forEach(group -> put(ProfileQuestion.healthKey(group.key()), "no"));
        }
        said.forEach((key, answer) -> {
            if (!key.equals(ProfileQuestion.HEALTH) || !answer.equals(NONE)) {
                put(key, answer);
            }
        });
    }

    private static Optional<String> impliedActivity(Set<String> keys) {
        if (keys.stream().anyMatch(key -> key.startsWith(ProfileQuestion.DIARY + "."))) {
            return Optional.of(ProfileQuestion.DIARY);
        }
        return keys.stream().anyMatch(FACTS::contains) ? Optional.of(ProfileQuestion.FACTS) : Optional.empty();
    }

    /** The user was asked and does not say. */
    public void leaveOpen(String key) {
        leftOpen.add(key);
    }

    /** Asks again for what is needed and was left open. */
    public void reopenNeeded() {
        missing().forEach(question -> leftOpen.remove(question.key()));
    }

    /** What was asked and not said. */
    Set<String> leftOpen() {
        return Collections.unmodifiableSet(leftOpen);
    }

    /** Also those that are only asked because of this one. */
    public void remove(String key) {
        leftOpen.remove(key);
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

    /** Whether there is nothing more to ask about it. */
    private boolean isSettled(ProfileQuestion question) {
        return leftOpen.contains(question.key())
                || (question.key().equals(ProfileQuestion.HEALTH) ? openGroups().isEmpty() : has(question.key()));
    }

    /** Groups of questions of health that concern this sex and are not answered as a whole. */
    public List<HealthGroup> openGroups() {
        boolean male = "male".equals(byKey.get("sex"));
        return HealthGroup.all().stream()
                .filter(group -> group.concerns(male ? Sex.MALE : Sex.FEMALE))
                .filter(group -> !byKey.containsKey(ProfileQuestion.healthKey(group.key())))
                .toList();
    }

    /** The first question that is asked in passing and neither answered nor left open. */
    public Optional<ProfileQuestion> next() {
        return questions().stream()
                .filter(question -> question.when() != ProfileQuestion.When.ON_REQUEST)
                .filter(question -> !isSettled(question))
                .findFirst();
    }

    /**
     * Questions that the answer of needs waits for, and that were neither answered nor left open; none where it is refused for another reason
     * anyway.
     *
     * @throws Refused when the answers do not make an eater
     */
    public List<ProfileQuestion> waitedFor() {
        List<Caution> stops = NeedsOfEater.answer(this).cautions().stream()
                .filter(Caution::stopsPlanning)
                .toList();
        if (stops.stream().anyMatch(caution -> caution.asks().isEmpty())) {
            return List.of();
        }
        return stops.stream()
                .flatMap(caution -> caution.asks().stream())
                .distinct()
                .flatMap(key -> ProfileQuestion.of(key).stream())
                .filter(question -> !has(question.key()) && !leftOpen.contains(question.key()))
                .toList();
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
            if (questions.get(q).isAnsweredBy(key)) {
                return q;
            }
        }
        return questions.size();
    }

    /** An answer in words, for a list of them. */
    public String said(ProfileQuestion question) {
        return switch (question.key()) {
            case ProfileQuestion.DIARY -> diary();
            case ProfileQuestion.HEALTH -> health();
            default -> byKey.getOrDefault(question.key(), NOT_SAID);
        };
    }

    private String diary() {
        String start = ProfileQuestion.DIARY + ".";
        return byKey.entrySet().stream()
                .filter(line -> line.getKey().startsWith(start))
                .map(line -> line.getKey().substring(start.length()) + " " + line.getValue())
                .collect(Collectors.joining(", "));
    }

    private String health() {
        if (!openGroups().isEmpty()) {
            return NOT_SAID;
        }
        String some = HealthGroup.all().stream()
                .filter(group -> "yes".equals(byKey.get(ProfileQuestion.healthKey(group.key()))))
                .map(HealthGroup::label)
                .collect(Collectors.joining(", "));
        return some.isEmpty() ? "nothing of what was asked" : some;
    }

    /** The questions that are asked with these answers, in their order. */
    public List<ProfileQuestion> questions() {
        return ProfileQuestion.list().stream()
                .filter(question -> question.applies().test(byKey))
                .toList();
    }

    /** Needed, asked and not answered. */
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

    /**
     * The same under another short name.
     *
     * @throws Refused when the answers do not make an eater
     */
    public Eater eater(String id, String name) {
        return workspace.value(page(id, name).read(kitchen));
    }

    /** Whether there is a folder that a profile can be saved in. */
    public boolean canBeSaved() {
        return workspace.source().folder().isPresent();
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
        return workspace
                .source()
                .folder()
                .map(own -> own.resolve(KitchenInFiles.pathOf(id)))
                .orElseThrow(() -> Refused.because(
                        "there is no folder of your own to save a profile in",
                        "Begin with the starter files in a folder, and name that folder."));
    }

    private ProfilePage page(String id, String name) {
        return new ProfilePage(id, name, all());
    }
}
