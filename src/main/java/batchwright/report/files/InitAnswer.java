package batchwright.report.files;

import batchwright.report.print.Json;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Which starter files were written. */
public final class InitAnswer {
    private InitAnswer() {}

    public static String text(String folder, List<String> written) {
        var page = new Page();
        if (written.isEmpty()) {
            page.paragraph("All starter files are in " + folder + " already; nothing was written.");
            return page.toString();
        }
        page.paragraph("Wrote " + Show.count(written.size(), "file", "files") + " into " + folder + ":");
        written.forEach(path -> page.line("  " + path));
        page.gap().paragraph("They are plain text: edit profiles/, foods/shop.csv and profiles/pantry.csv first.");
        page.line("Then: check --data " + folder);
        return page.toString();
    }

    /** Schema batchwright.init/1. */
    public static String json(String folder, List<String> written) {
        ObjectNode root = Json.schema("init/1").put("folder", folder);
        ArrayNode paths = root.putArray("written");
        written.forEach(paths::add);
        return Json.text(root);
    }
}
