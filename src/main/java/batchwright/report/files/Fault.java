package batchwright.report.files;

import batchwright.report.print.Json;
import batchwright.text.Echo;
import batchwright.text.Problem;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
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

    /** All faults for scripts, schema batchwright.error/1. */
    public static String json(List<Fault> faults) {
        ObjectNode root = Json.schema("error/1");
        ArrayNode errors = root.putArray("errors");
        faults.forEach(fault -> fault.putInto(errors.addObject()));
        return Json.text(root);
    }

    void putInto(ObjectNode node) {
        problem.ifPresent(p -> node.put("severity", p.isError() ? "error" : "warning"));
        node.put("wrong", wrong).put("cure", cure);
        problem.ifPresent(p -> {
            node.put("path", p.at().file().path());
            if (p.at().line() > 0) {
                node.put("line", p.at().line()).put("column", p.at().column());
            }
            p.nearest().ifPresent(name -> node.put("nearest", name));
        });
    }
}
