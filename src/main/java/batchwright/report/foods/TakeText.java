package batchwright.report.foods;

import batchwright.answer.TakenFood;
import batchwright.report.print.Page;
import java.util.List;

/** Lines to paste. Remarks stand in comment lines, which the tables may hold. Lines are not wrapped. */
public final class TakeText {
    private static final int MOST = 76;

    private TakeText() {}

    public static String of(List<TakenFood> foods) {
        var out = new StringBuilder("# Add to foods/catalogue.csv:\n");
        foods.forEach(food -> {
            food.yours()
                    .ifPresent(f -> comment(
                            out, "note: " + food.proposal().food().ndb() + " is in your catalogue already: " + f.id()));
            comment(
                    out,
                    "check " + food.proposal().id() + ": "
                            + String.join("; ", food.proposal().guesses()));
            out.append(food.line()).append('\n');
        });
        if (foods.stream().anyMatch(food -> !food.measures().isEmpty())) {
            out.append("\n# Add to foods/measures.csv those that you use:\n");
            foods.forEach(
                    food -> food.measures().forEach(line -> out.append(line).append('\n')));
        }
        return out.toString();
    }

    private static void comment(StringBuilder out, String text) {
        Page.wrap(text, MOST).forEach(line -> out.append("# ").append(line).append('\n'));
    }
}
