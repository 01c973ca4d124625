package batchwright.files.value;

import batchwright.files.disk.Read;
import batchwright.text.NearestName;
import batchwright.text.Problem;
import batchwright.text.Problem.Severity;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects what is wrong in all files, so that one run names it all; of each file only the first ten are shown. */
public final class Problems {
    static final int MOST_A_FILE = 10;

    private final List<Problem> found = new ArrayList<>();
    private int errors;

    public void add(Problem problem) {
        found.add(problem);
        errors += problem.isError() ? 1 : 0;
    }

    public void error(Span at, String wrong, String expected) {
        add(Problem.error(at, wrong, expected));
    }

    public void error(Written what, String wrong, String expected) {
        error(what.at(), wrong, expected);
    }

    public void warning(Span at, String wrong, String expected) {
        add(Problem.warning(at, wrong, expected));
    }

    /** A name that is not among the valid ones: an error that names the nearest. */
    public void unknown(Written name, String wrong, String expected, Collection<String> valid) {
        // The nearest name takes time, and beyond so many errors nobody sees it.
        Optional<String> nearest = errors > 10 * MOST_A_FILE ? Optional.empty() : NearestName.of(name.text(), valid);
        add(Problem.error(name.at(), wrong, expected).near(nearest));
    }

    public int errors() {
        return errors;
    }

    /** Problems file by file in the order the files were read, and inside a file from top to bottom. */
    public List<Problem> list() {
        Map<String, List<Problem>> byFile = new LinkedHashMap<>();
        found.forEach(p -> byFile.computeIfAbsent(p.at().file().path(), path -> new ArrayList<>())
                .add(p));
        return byFile.values().stream().flatMap(file -> firstTen(file).stream()).toList();
    }

    /** What was read, unless there was an error. */
    public <T> Read<T> result(Supplier<T> value) {
        return new Read<>(errors == 0 ? Optional.of(value.get()) : Optional.empty(), list());
    }

    private static List<Problem> firstTen(List<Problem> ofFile) {
        var byPlace = Comparator.comparingInt((Problem p) -> p.at().line()).thenComparingInt(p -> p.at().column());
        var errorsFirst = Comparator.comparing((Problem p) -> !p.isError()).thenComparing(byPlace);
        var shown = new ArrayList<>(ofFile.stream()
                .sorted(errorsFirst)
                .limit(MOST_A_FILE)
                .sorted(byPlace)
                .toList());
        for (Severity severity : Severity.values()) {
            int more = count(ofFile, severity) - count(shown, severity);
            if (more > 0) {
                shown.add(Problem.more(ofFile.get(0).at().file(), severity, more));
            }
        }
        return shown;
    }

    private static int count(List<Problem> problems, Severity severity) {
        return (int) problems.stream().filter(p -> p.severity() == severity).count();
    }
}
