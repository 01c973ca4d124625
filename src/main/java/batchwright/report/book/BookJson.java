package batchwright.report.book;

import batchwright.answer.AtHome;
import batchwright.answer.BookAnswer;
import batchwright.book.EventWords;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** The same for scripts: schema batchwright.book/1. */
public final class BookJson {
    private BookJson() {}

    public static String of(BookAnswer answer) {
        ObjectNode root = Json.schema("book/1").put("file", answer.file());
        ArrayNode lines = root.putArray("written");
        answer.lines().forEach(lines::add);
        return Json.text(root);
    }

    public static String of(AtHome home) {
        ObjectNode root = Json.schema("book/1").put("day", home.day().toString());
        ArrayNode lines = root.putArray("last_lines");
        home.lastLines()
                .forEach(entry -> lines.addObject()
                        .put("line", entry.line())
                        .put("says", EventWords.line(entry.day(), entry.event())));
        TodayJson.boxes(root.putArray("containers"), home.boxes());
        ArrayNode foods = root.putArray("foods");
        home.foods()
                .forEach((food, lots) -> lots.forEach(lot -> {
                    ObjectNode node = foods.addObject().put("food", food.id()).put("grams", Json.tenth(lot.grams()));
                    Json.text(node, "use_by", lot.useBy().map(Object::toString));
                }));
        return Json.text(root);
    }
}
