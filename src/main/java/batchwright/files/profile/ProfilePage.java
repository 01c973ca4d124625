package batchwright.files.profile;

import batchwright.files.disk.DataFiles;
import batchwright.files.disk.Found;
import batchwright.files.disk.Read;
import batchwright.files.page.WrittenValue;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A profile made of answers instead of a file: the same keys and values, read by the same reader, so that every way of entering
 * them has one grammar and the same messages. Keys of a group are written group.key, such as tape.neck.
 */
public final class ProfilePage {
    private static final Set<String> LISTS = Set.of("avoid");
    private static final String NOTHING = "none";
    private static final String MISSING = " is missing";

    private final String id;
    private final List<String> lines = new ArrayList<>();
    private final Map<String, Integer> lineOf = new HashMap<>();

    /**
     * @param id short name of the eater, and of the page
     * @param answers value by key, in the order in which they are to be written
     */
    public ProfilePage(String id, String name, Map<String, String> answers) {
        this.id = id;
        lines.add("# A profile: one eater a file. Change what you like; a check names slips.");
        put("eater", id);
        put("name", name);
        String open = "";
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            int dot = answer.getKey().indexOf('.');
            String group = dot < 0 ? "" : answer.getKey().substring(0, dot);
            if (!group.isEmpty() && !group.equals(open)) {
                lines.add(group + ":");
            }
            open = group;
            String indent = group.isEmpty() ? "" : "  ";
            String value =
                    LISTS.contains(answer.getKey()) ? list(answer.getValue()) : WrittenValue.of(answer.getValue());
            lines.add(indent + answer.getKey().substring(dot + 1) + ": " + value);
            lineOf.put(answer.getKey(), lines.size());
        }
    }

    private void put(String key, String value) {
        lines.add(key + ": " + WrittenValue.of(value));
        lineOf.put(key, lines.size());
    }

    /** Names divided by commas; those of the files have no blanks and no capital letters. */
    private static String list(String names) {
        return Arrays.stream(names.split(","))
                .map(name -> name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "_"))
                .filter(name -> !name.isEmpty() && !name.equals(NOTHING))
                .collect(Collectors.collectingAndThen(Collectors.toList(), WrittenValue::of));
    }

    /** As it is written to a file. */
    public String text() {
        return String.join("\n", lines) + "\n";
    }

    /** The eater, or every problem of the answers. */
    public Read<Eater> read(Kitchen kitchen) {
        String path = id + ".yaml";
        return EaterReader.read(new OneFile(path, text()), path, Optional.of(kitchen));
    }

    /** What is wrong with one answer, or with one group of them; what is still missing is not. */
    public List<Problem> problemsOf(String key, Kitchen kitchen) {
        return read(kitchen).problems().stream()
                .filter(Problem::isError)
                .filter(problem -> !problem.wrong().endsWith(MISSING))
                .filter(problem -> isAt(problem.at().line(), key))
                .toList();
    }

    private boolean isAt(int line, String key) {
        return lineOf.entrySet().stream()
                .anyMatch(e -> e.getValue() == line
                        && (e.getKey().equals(key) || e.getKey().startsWith(key + ".")));
    }

    /** A page that is not on the disk. */
    private record OneFile(String path, String text) implements DataFiles {
        @Override
        public Found<SourceFile> read(String wanted) {
            return wanted.equals(path) ? new Found.There<>(SourceFile.of(path, text)) : new Found.Absent<>();
        }

        @Override
        public Found<List<Entry>> list(String folder) {
            return new Found.Absent<>();
        }
    }
}
