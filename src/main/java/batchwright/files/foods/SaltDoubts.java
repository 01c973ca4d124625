package batchwright.files.foods;

import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Warns of salt that a label can state but hardly does: sodium in grams where labels state salt or mg, which takes the one for
 * the other; and a food of a group that is never so salty.
 */
final class SaltDoubts {
    private static final Pattern SODIUM_IN_GRAMS =
            Pattern.compile("(?:sodium +)?(?:<|less than )? *([0-9.]+) *g(?: +(?:of +)?sodium)?");
    /**
     * Groups of which hardly any food has more than 5 g salt in 100 g. In USDA SR28 those that have are twelve: two salted eggs for
     * bakers, one milk powder, two kinds of seeds salted in the shell, and dry mixes.
     */
    private static final Set<String> NOT_SO_SALTY = Set.of(
            "grain",
            "egg",
            "dairy",
            "starchy_vegetable",
            "fruit",
            "dried_fruit",
            "nut_seed",
            "fat_oil",
            "sweet",
            "protein_powder");

    private static final BigDecimal MUCH = BigDecimal.valueOf(5);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Label label;
    private final String group;
    private final Written cell;
    private final Problems problems;

    /** @param cell where salt or sodium stands */
    SaltDoubts(Label label, String group, Written cell, Problems problems) {
        this.label = label;
        this.group = group;
        this.cell = cell;
        this.problems = problems;
    }

    void check() {
        String text = cell.text().toLowerCase(Locale.ROOT);
        Matcher sodium = SODIUM_IN_GRAMS.matcher(text);
        boolean inGrams = text.contains("sodium") && sodium.matches();
        BigDecimal salt = label.figures().saltOfSodium();
        BigDecimal in100 = salt.multiply(HUNDRED).divide(label.per().grams(), 1, RoundingMode.HALF_UP);
        if (inGrams && label.kind() == LabelKind.EU) {
            warn(
                    "%s are %s g salt".formatted(cell.text(), plain(salt)),
                    "European labels state salt: is it %s g salt?".formatted(sodium.group(1)));
        } else if (inGrams && new BigDecimal(sodium.group(1)).compareTo(BigDecimal.ONE) >= 0) {
            warn(
                    "%s are %s g salt in %s g of food"
                            .formatted(
                                    cell.text(),
                                    plain(salt),
                                    label.per().grams().toPlainString()),
                    "US labels state sodium in mg: is it mg instead of g?");
        } else if (in100.compareTo(MUCH) > 0 && NOT_SO_SALTY.contains(group)) {
            warn(
                    "%s g salt in 100 g is much for the group %s".formatted(plain(in100), group),
                    "look for a point in the wrong place, or for mg; a food that is truly so salty may stay");
        }
    }

    private void warn(String wrong, String why) {
        problems.warning(cell.at(), wrong, why);
    }

    private static String plain(BigDecimal grams) {
        BigDecimal rounded = grams.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
