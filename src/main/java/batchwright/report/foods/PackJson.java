package batchwright.report.foods;

import batchwright.food.Pack;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;

/** How a pack is sold and how old its price is, for scripts. */
public final class PackJson {
    private PackJson() {}

    public static void put(ObjectNode node, Pack pack, LocalDate cookingDay) {
        node.put("loose", pack.isLoose());
        node.put("units", pack.contents().units());
        node.put("unit_g", Show.plain(pack.contents().unitGrams(), 2));
        pack.contents()
                .drainedGrams()
                .ifPresentOrElse(
                        grams -> node.put("unit_drained_g", Show.plain(grams, 2)),
                        () -> node.putNull("unit_drained_g"));
        node.put("seen", pack.seen().toString());
        node.put("stale", pack.isStaleOn(cookingDay));
    }

    /** Nothing is bought. */
    public static void none(ObjectNode node) {
        node.put("loose", false).putNull("units").putNull("unit_g").putNull("unit_drained_g");
        node.putNull("seen").put("stale", false);
    }
}
