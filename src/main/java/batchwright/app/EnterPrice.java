package batchwright.app;

import batchwright.files.KitchenReader;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.WithChange;
import batchwright.files.shop.PriceEntry;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.report.foods.PriceAnswer;
import batchwright.text.SourceFile;
import batchwright.write.CannotWrite;
import batchwright.write.EditedFile;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Puts a price that the user has seen into foods/shop.csv: one line changes, all others stay as they are, byte for byte. */
public final class EnterPrice {
    private static final String TABLE = "foods/shop.csv";
    /** Behind every end of a line, which stays with it. */
    private static final Pattern LINES = Pattern.compile("(?<=\n)|(?<=\r)(?!\n)");

    private final Workspace workspace;
    private final Kitchen kitchen;

    public EnterPrice(Workspace workspace, Kitchen kitchen) {
        this.workspace = workspace;
        this.kitchen = kitchen;
    }

    /** @throws Refused when the user has no kitchen, or the table would not be right with it; then nothing is written */
    public PriceAnswer enter(Food food, SeenPrice seen) {
        return enter(food, seen, true);
    }

    /** Finds out whether {@link #enter} would do; nothing is written. */
    public void check(Food food, SeenPrice seen) {
        var unused = enter(food, seen, false);
    }

    private PriceAnswer enter(Food food, SeenPrice seen, boolean write) {
        var entry = new PriceEntry(food, seen.shop(), seen.pack(), seen.label(), seen.price());
        FolderFiles folder = workspace.ownFolder("and the starter files stay as they are");
        try {
            EditedFile file = EditedFile.of(folder.path(TABLE));
            PriceEntry.Change change = change(entry, SourceFile.of(folder.shown(TABLE), file.text()));
            String text = changed(file.text(), change);
            var after = new WithChange(folder, TABLE, SourceFile.of(folder.shown(TABLE), text));
            workspace.value(KitchenReader.readFoods(after, workspace.cookingDay()));
            if (write) {
                file.replace(text);
            }
            int line = change.number() + (change.replaces() ? 0 : 1);
            return new PriceAnswer(folder.shown(TABLE), line, change.line(), change.priceBefore());
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    private PriceEntry.Change change(PriceEntry entry, SourceFile table) {
        try {
            return entry.in(table, kitchen.currency(), workspace.cookingDay());
        } catch (PriceEntry.Ambiguous several) {
            throw Refused.because(
                    "several packs of " + entry.food() + " are like that: " + several.labels(),
                    "Say which, by one of these labels.");
        }
    }

    private static String changed(String text, PriceEntry.Change change) {
        List<String> lines = new ArrayList<>(List.of(LINES.split(text, -1)));
        if (lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        String end = end(lines.get(0), "\n");
        int at = change.number() - 1;
        if (change.replaces()) {
            lines.set(at, change.line() + end(lines.get(at), ""));
        } else {
            if (end(lines.get(at), "").isEmpty()) {
                lines.set(at, lines.get(at) + end);
            }
            lines.add(at + 1, change.line() + end);
        }
        return String.join("", lines);
    }

    /** How a line ends. */
    private static String end(String line, String otherwise) {
        if (line.endsWith("\r\n")) {
            return "\r\n";
        }
        return line.endsWith("\n") || line.endsWith("\r") ? line.substring(line.length() - 1) : otherwise;
    }
}
