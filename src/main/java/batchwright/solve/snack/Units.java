package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Turns decimals into whole numbers and back without loss: with 110.1 kcal among the figures, all energies are counted
 * in tenths of a kcal. Energy, protein, weight and cost have a scale each.
 */
record Units(int energyScale, int proteinScale, int gramsScale, int costScale) {

    /**
     * The largest total. Leaves room for the sums and products of the search, so that none overflows; at ten decimals
     * it is still above 100,000 kcal.
     */
    static final long MOST = 1L << 50;

    static Units of(List<SnackItem> items, SnackAsk ask) {
        Stream<BigDecimal> energies = Stream.concat(Stream.of(ask.leastKcal()), ask.mostKcal().stream());
        return new Units(
                scale(Stream.concat(energies, items.stream().map(SnackItem::energyKcal))),
                scale(Stream.concat(Stream.of(ask.proteinG()), items.stream().map(SnackItem::proteinG))),
                scale(items.stream().map(SnackItem::grams)),
                scale(Stream.concat(ask.budget().stream(), items.stream().map(SnackItem::cost))));
    }

    private static int scale(Stream<BigDecimal> figures) {
        return figures.mapToInt(figure -> figure.stripTrailingZeros().scale()).reduce(0, Math::max);
    }

    Window window(SnackAsk ask) {
        return new Window(
                whole("energyKcal", ask.leastKcal(), energyScale),
                limit("mostKcal", ask.mostKcal(), energyScale),
                whole("proteinG", ask.proteinG(), proteinScale),
                limit("budget", ask.budget(), costScale),
                ask.mostKinds());
    }

    private static long limit(String name, Optional<BigDecimal> most, int scale) {
        return most.map(figure -> whole(name, figure, scale)).orElse(Window.NO_LIMIT);
    }

    Piece piece(SnackItem item) {
        return new Piece(
                item.code(),
                whole("energyKcal of " + item.code(), item.energyKcal(), energyScale),
                whole("proteinG of " + item.code(), item.proteinG(), proteinScale),
                whole("grams of " + item.code(), item.grams(), gramsScale),
                whole("cost of " + item.code(), item.cost(), costScale),
                item.most(),
                item.atHome());
    }

    private static long whole(String name, BigDecimal figure, int scale) {
        BigDecimal whole = figure.setScale(scale).movePointRight(scale);
        if (whole.compareTo(BigDecimal.valueOf(MOST)) > 0) {
            throw tooLarge(name + " (" + figure.toPlainString() + ")");
        }
        return whole.longValueExact();
    }

    /** The pieces a snack for this window can be made of, as many of each as can be needed; the others are left out. */
    List<Piece> needed(List<Piece> pieces, Window window) {
        List<Piece> needed = new ArrayList<>();
        for (Piece piece : pieces) {
            int most = window.mostNeeded(piece);
            if (most > 0) {
                needed.add(piece.withMost(most));
            }
        }
        requireSmallTotals(needed);
        return needed;
    }

    private static void requireSmallTotals(List<Piece> pieces) {
        double energy = 0;
        double protein = 0;
        double grams = 0;
        double cost = 0;
        for (Piece piece : pieces) {
            energy += (double) piece.energy() * piece.most();
            protein += (double) piece.protein() * piece.most();
            grams += (double) piece.grams() * piece.most();
            cost += (double) piece.cost() * piece.most();
        }
        if (Math.max(Math.max(energy, protein), Math.max(grams, cost)) > MOST) {
            throw tooLarge("The total of all pieces");
        }
    }

    private static IllegalArgumentException tooLarge(String what) {
        return new IllegalArgumentException(
                what + " is too large for exact sums. Maybe give the figures with fewer decimals.");
    }

    SnackAnswer answer(Choice choice, SnackAsk ask) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int i = 0; i < choice.counts().length; i++) {
            if (choice.counts()[i] > 0) {
                counts.put(choice.pieces().get(i).code(), choice.counts()[i]);
            }
        }
        BigDecimal energyKcal = BigDecimal.valueOf(choice.energy(), energyScale);
        return new SnackAnswer(
                counts,
                energyKcal,
                BigDecimal.valueOf(choice.protein(), proteinScale),
                BigDecimal.valueOf(choice.total(Piece::grams), gramsScale),
                BigDecimal.valueOf(choice.total(Piece::cost), costScale),
                (int) choice.total(piece -> 1),
                energyKcal.subtract(ask.leastKcal()));
    }
}
