package batchwright.solve.snack;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The exact search for the smallest snack: whole pieces of some items, so that energy and protein reach what is asked
 * and cost, energy and kinds stay within their limits (a bounded covering knapsack).
 *
 * <p>The same items and ask give the same answers in the same order, whatever the order of the items. The time grows
 * with the number of items, with the kinds allowed and with the decimals of the figures: give energies to the decimals
 * they are known to.
 */
public final class SnackSearch {
    private SnackSearch() {}

    /**
     * The smallest snacks for what is asked, or how short the closest one is.
     *
     * @throws IllegalArgumentException when two items share a code, or figures are too large for exact sums
     *     (a total above about 10^15 in units of the last decimal given)
     */
    public static SnackResult search(List<SnackItem> items, SnackAsk ask) {
        requireDifferentCodes(items);
        Units units = Units.of(items, ask);
        Window window = units.window(ask);
        List<Piece> all = items.stream()
                .map(units::piece)
                .sorted(Comparator.comparing(Piece::code))
                .toList();
        List<Choice> found = DepthFirst.search(units.needed(all, window), window, ask.smallest(), ask.answers());
        if (found.isEmpty()) {
            return new Shortfall(all, units, ask).explain();
        }
        return new SnackResult.Found(
                found.stream().map(choice -> units.answer(choice, ask)).toList());
    }

    private static void requireDifferentCodes(List<SnackItem> items) {
        Set<String> codes = new HashSet<>();
        for (SnackItem item : items) {
            if (!codes.add(item.code())) {
                throw new IllegalArgumentException("Two items have the code (" + item.code() + ").");
            }
        }
    }
}
