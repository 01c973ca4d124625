package batchwright.report.foods;

import batchwright.food.Contents;
import batchwright.food.Pack;
import batchwright.report.print.Show;
import java.math.BigDecimal;

/** A pack in words: what the shelf says and what is in it. */
public final class PackText {
    private PackText() {}

    /** So many of a pack, or so many steps of loose goods: 2 x bag 400 g; 1 x four-pack, 4 x 400 g; 300 g loose. */
    public static String bought(Pack pack, int count) {
        return pack.isLoose()
                ? Show.plainText(pack.grams().multiply(BigDecimal.valueOf(count)), 1) + " g loose"
                : count + " x " + withGrams(pack);
    }

    /** What the shelf says, with the grams unless it already says them. */
    private static String withGrams(Pack pack) {
        String grams = grams(pack.contents().unitGrams());
        boolean says = pack.contents().units() == 1 && pack.label().contains(grams);
        return pack.label() + inside(pack.contents(), says ? "" : " " + grams);
    }

    /** As a table of packs says it, which has a column for the grams. */
    public static String label(Pack pack) {
        return pack.isLoose()
                ? pack.label() + ", in steps of " + grams(pack.grams())
                : pack.label() + inside(pack.contents(), "");
    }

    /** @param single the grams of a single pack, if they are to be said */
    private static String inside(Contents contents, String single) {
        boolean many = contents.units() > 1;
        String units = many ? ", " + contents.units() + " x " + grams(contents.unitGrams()) : single;
        String drained = contents.drainedGrams()
                .map(grams -> " (" + grams(grams) + " drained" + (many ? " each)" : ")"))
                .orElse("");
        return units + drained;
    }

    private static String grams(BigDecimal grams) {
        return Show.plainText(grams, 1) + " g";
    }
}
