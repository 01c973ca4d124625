package batchwright.files;

import batchwright.files.disk.DataFiles.Entry;
import batchwright.files.disk.Found;
import batchwright.text.Problem;
import java.util.List;

/** One of the three answers, where a test knows which it must be. */
public final class FoundIn {
    private FoundIn() {}

    public static <T> T there(Found<T> found) {
        return found.match(
                () -> {
                    throw new AssertionError("absent");
                },
                value -> value,
                problem -> {
                    throw new AssertionError(problem.render());
                });
    }

    public static List<String> paths(Found<List<Entry>> found) {
        return there(found).stream().map(Entry::path).toList();
    }

    public static boolean isAbsent(Found<?> found) {
        return found instanceof Found.Absent<?>;
    }

    public static Problem problem(Found<?> found) {
        return found.match(
                () -> {
                    throw new AssertionError("absent");
                },
                value -> {
                    throw new AssertionError("there: " + value);
                },
                problem -> problem);
    }
}
