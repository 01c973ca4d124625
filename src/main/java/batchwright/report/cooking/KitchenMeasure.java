package batchwright.report.cooking;

import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.MeasureName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * So many of a household measure, to the fractions that spoons and cups are made in. Of a food's measures it is the one that a
 * cook would take: cups for much, spoons for little, whole eggs and onions.
 *
 * @param twelfths how many, in twelfths
 * @param off how far that is from the grams, as a share of them
 */
public record KitchenMeasure(Measure measure, int twelfths, BigDecimal off) {
    private static final int ONE = MeasureKind.ONE;
    /** No cook counts more of anything. */
    private static final int MOST = 40 * ONE;
    /** Nor more cups of anything: then grams alone are better. */
    private static final int MOST_CUPS = 20 * ONE;
    /** Within this no word is needed: a kitchen scale is no more exact for small amounts. */
    private static final BigDecimal EXACT = new BigDecimal("0.03");
    /** A measure that misses by more is worse than none. */
    private static final BigDecimal TOO_FAR = new BigDecimal("0.10");

    private static final String EGG = "egg";
    private static final String VEGETABLE = "vegetable";
    private static final List<String> SIZES = List.of("small", "medium", "large", "extra large", "jumbo");
    /** Packs that a cook counts, too: two bunches of kale rather than 37 cups, half a piece of ginger. */
    private static final List<String> COUNTED_AS_SOLD = List.of("bunch", "head", "piece");
    /** From half a one on a cook counts what can be counted, rather than cups of what it is cut into. */
    private static final int COUNTED_FROM = ONE / 2;

    private static final List<String> WEIGHTS = List.of("ounce", "pound", "oz", "lb");

    /** Such as "1 1/2 cups" or "about 4 tbsp"; empty when no measure of the food fits. */
    public static Optional<String> text(Kitchen kitchen, Food food, BigDecimal grams) {
        return of(sold(kitchen, food), grams).map(KitchenMeasure::text);
    }

    /** Only where it is pieces: 8 large eggs; empty for cups and spoons. */
    public static Optional<String> pieces(Kitchen kitchen, Food food, BigDecimal grams) {
        List<Measure> pieces = sold(kitchen, food).stream()
                .filter(m -> MeasureKind.of(m.name()) == MeasureKind.PIECE)
                .toList();
        return of(pieces, grams).map(KitchenMeasure::text);
    }

    /** The measures of the food, and a bunch or a head where a shop sells it so. */
    private static List<Measure> sold(Kitchen kitchen, Food food) {
        return Stream.concat(
                        inOneSize(kitchen.measuresOf(food), food).stream(),
                        kitchen.packsOf(food).stream()
                                .filter(pack -> COUNTED_AS_SOLD.contains(pack.label()))
                                .map(pack -> new Measure(
                                        food, pack.label(), pack.grams().multiply(food.edibleShare()), 0, "as sold")))
                .toList();
    }

    /** Eggs come in one size, the first in the file: nobody has a large egg and half a small one. */
    private static List<Measure> inOneSize(List<Measure> measures, Food food) {
        boolean wholeEgg = food.group().equals(EGG) && !measures.isEmpty();
        String size = wholeEgg ? measures.get(0).name() : "";
        return measures.stream()
                .filter(m -> !wholeEgg || !SIZES.contains(m.name()) || m.name().equals(size))
                .toList();
    }

    /** As the recipe writes it, or else as a cook would measure its grams. */
    public static Optional<String> text(Kitchen kitchen, Ingredient ingredient) {
        return ingredient.measured().or(() -> text(kitchen, ingredient.food(), ingredient.amount()));
    }

    public static Optional<KitchenMeasure> of(List<Measure> measures, BigDecimal grams) {
        if (grams.signum() <= 0) {
            return Optional.empty();
        }
        List<KitchenMeasure> fitting = measures.stream()
                .filter(m -> !WEIGHTS.contains(m.name()))
                .map(m -> rounded(m, grams))
                .filter(k -> k.kind() != MeasureKind.CUP || k.twelfths <= MOST_CUPS)
                .filter(k -> k.twelfths > 0 && k.twelfths <= MOST && k.off.compareTo(TOO_FAR) <= 0)
                .toList();
        boolean counted = fitting.stream()
                .anyMatch(k -> k.kind() == MeasureKind.PIECE && k.twelfths >= COUNTED_FROM && k.beyondHandy() == 0);
        return fitting.stream()
                .filter(k -> !counted || !k.isCupOfWhatIsCut())
                .min(Comparator.comparingInt(KitchenMeasure::beyondHandy).thenComparing(KitchenMeasure::isAbout));
    }

    private MeasureKind kind() {
        return MeasureKind.of(measure.name());
    }

    /** Such as a cup of shreds; or of a vegetable, whose leaves or pieces are loose in it. */
    private boolean isCupOfWhatIsCut() {
        return kind() == MeasureKind.CUP
                && (measure.name().startsWith("cup of ")
                        || measure.food().group().equals(VEGETABLE));
    }

    private static KitchenMeasure rounded(Measure measure, BigDecimal grams) {
        BigDecimal one = measure.grams().divide(BigDecimal.valueOf(ONE), MathContext.DECIMAL64);
        BigDecimal exact = grams.divide(one, MathContext.DECIMAL64);
        if (exact.compareTo(BigDecimal.valueOf(MOST + ONE)) > 0) {
            return new KitchenMeasure(measure, MOST + ONE, BigDecimal.ZERO);
        }
        int twelfths = MeasureKind.of(measure.name()).nearest(exact);
        BigDecimal off =
                one.multiply(BigDecimal.valueOf(twelfths)).subtract(grams).abs();
        return new KitchenMeasure(measure, twelfths, off.divide(grams, MathContext.DECIMAL64));
    }

    /** 0 for a number that is easily counted, else the number. */
    private int beyondHandy() {
        return kind().isHandy(twelfths) ? 0 : twelfths;
    }

    private boolean isAbout() {
        return off.compareTo(EXACT) > 0;
    }

    String text() {
        BigDecimal count = BigDecimal.valueOf(twelfths).divide(BigDecimal.valueOf(ONE), 2, RoundingMode.HALF_UP);
        return (isAbout() ? "about " : "") + number() + " " + MeasureName.of(count, measure.name());
    }

    private String number() {
        String fraction = switch (twelfths % ONE) {
            case 3 -> "1/4";
            case 4 -> "1/3";
            case 6 -> "1/2";
            case 8 -> "2/3";
            case 9 -> "3/4";
            default -> "";
        };
        String whole = twelfths < ONE ? "" : Integer.toString(twelfths / ONE);
        return (whole + " " + fraction).strip();
    }
}
