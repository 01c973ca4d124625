package batchwright.answer;

import batchwright.text.Echo;
import batchwright.text.Problem;
import java.util.Optional;

/**
 * Something that stops a command.
 *
 * @param wrong what is wrong, one sentence without a full stop
 * @param cure what to do about it; may be empty
 * @param problem where in a file, if it is in one
 */
public record Fault(String wrong, String cure, Optional<Problem> problem) {
    private static final int MOST_WRONG = 300;
    private static final int MOST_CURE = 2000;

    /** What is too long to be read, such as an argument of a page, is shortened. */
    public static Fault of(String wrong, String cure) {
        return new Fault(Echo.shortened(MOST_WRONG, wrong), Echo.shortened(MOST_CURE, cure), Optional.empty());
    }

    public static Fault of(Problem problem) {
        String nearest =
                problem.nearest().map(name -> "; nearest: \"" + name + "\"").orElse("");
        return new Fault(problem.wrong(), problem.expected() + nearest, Optional.of(problem));
    }

    /** For people: what is wrong, then what to do. */
    public String text() {
        return problem.map(Problem::render)
                .orElseGet(() -> "error: " + Echo.line(wrong) + "\n" + (cure.isEmpty() ? "" : Echo.line(cure) + "\n"));
    }
}
