package batchwright.report.files;

import batchwright.answer.Fault;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** All faults for scripts, schema batchwright.error/1. */
public final class FaultsJson {
    private FaultsJson() {}

    public static String of(List<Fault> faults) {
        ObjectNode root = Json.schema("error/1");
        ArrayNode errors = root.putArray("errors");
        faults.forEach(fault -> put(errors.addObject(), fault));
        return Json.text(root);
    }

    /** What is wrong, what to do, and where. */
    public static void put(ObjectNode node, Fault fault) {
        fault.problem().ifPresent(p -> node.put("severity", p.isError() ? "error" : "warning"));
        node.put("wrong", fault.wrong()).put("cure", fault.cure());
        fault.problem().ifPresent(p -> {
            node.put("path", p.at().file().path());
            if (p.at().line() > 0) {
                node.put("line", p.at().line()).put("column", p.at().column());
            }
            p.nearest().ifPresent(name -> node.put("nearest", name));
        });
    }
}
