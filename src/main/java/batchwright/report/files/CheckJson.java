package batchwright.report.files;

import batchwright.answer.Fault;
import batchwright.report.print.Json;
import batchwright.text.Problem;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What was found in the files, for scripts: schema batchwright.check/1. */
public final class CheckJson {
    private CheckJson() {}

    public static String of(List<Problem> problems) {
        ObjectNode root = Json.schema("check/1");
        root.put("status", problems.stream().anyMatch(Problem::isError) ? "errors" : "right");
        ProblemCount count = ProblemCount.of(problems);
        root.put("errors", count.errors()).put("warnings", count.warnings()).put("files", count.files());
        ArrayNode list = root.putArray("problems");
        problems.forEach(problem -> FaultsJson.put(list.addObject(), Fault.of(problem)));
        return Json.text(root);
    }
}
