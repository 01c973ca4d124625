package batchwright.report.files;

import batchwright.text.Problem;
import batchwright.text.Problem.Severity;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How much is wrong.
 *
 * @param files that have a problem
 */
public record ProblemCount(int errors, int warnings, int files) {
    public static ProblemCount of(List<Problem> problems) {
        long files = problems.stream().map(p -> p.at().file().path()).distinct().count();
        return new ProblemCount(
                count(problems, Severity.ERROR), count(problems, Severity.WARNING), Math.toIntExact(files));
    }

    private static int count(List<Problem> problems, Severity severity) {
        return problems.stream()
                .filter(p -> p.severity() == severity)
                .mapToInt(Problem::count)
                .sum();
    }

    /** One line such as: 2 errors, 1 warning in 3 files; empty when nothing is wrong. */
    public String text() {
        String found = Stream.of(counted(errors, "error"), counted(warnings, "warning"))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return found.isEmpty() ? "" : found + " in " + counted(files, "file") + "\n";
    }

    private static String counted(int count, String what) {
        return count == 0 ? "" : count + " " + what + (count == 1 ? "" : "s");
    }
}
