package batchwright.report.foods;

import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * A price that was put into the table of packs.
 *
 * @param file the table, as the user knows it
 * @param number of the line, from 1
 * @param line as it stands there now
 * @param priceBefore of the same pack, if it was there
 */
public record PriceAnswer(String file, int number, String line, Optional<String> priceBefore) {
    public String text() {
        return file + ":" + number + ": " + (priceBefore.isPresent() ? "changed" : "added") + "\n" + line + "\n"
                + priceBefore
                        .map(before -> "The price before: " + before + ".\n")
                        .orElse("");
    }

    /** Schema batchwright.price/1. */
    public String json() {
        ObjectNode root =
                Json.schema("price/1").put("file", file).put("number", number).put("line", line);
        priceBefore.ifPresentOrElse(before -> root.put("price_before", before), () -> root.putNull("price_before"));
        return Json.text(root);
    }
}
