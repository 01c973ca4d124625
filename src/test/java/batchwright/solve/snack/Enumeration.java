package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The plain way to find the smallest snack, to check the search against: every combination, one after the other like the
 * wheels of an odometer, all sums in decimals. Shares no code with the search.
 */
final class Enumeration {

    /** One combination and what it adds up to. */
    record Combination(
            int[] counts,
            BigDecimal kcal,
            BigDecimal protein,
            BigDecimal grams,
            BigDecimal cost,
            int pieces,
            int kinds,
            int atHome) {}

    private final List<SnackItem> items;
    private final List<Combination> all = new ArrayList<>();

    Enumeration(List<SnackItem> items) {
        this.items =
                items.stream().sorted(Comparator.comparing(SnackItem::code)).toList();
        int[] wheels = new int[items.size()];
        do {
            all.add(combination(wheels.clone()));
        } while (turn(wheels));
    }

    private boolean turn(int[] wheels) {
        for (int i = 0; i < wheels.length; i++) {
            if (wheels[i] < items.get(i).most()) {
                wheels[i]++;
                return true;
            }
            wheels[i] = 0;
        }
        return false;
    }

    private Combination combination(int[] counts) {
        BigDecimal kcal = BigDecimal.ZERO;
        BigDecimal protein = BigDecimal.ZERO;
        BigDecimal grams = BigDecimal.ZERO;
        BigDecimal cost = BigDecimal.ZERO;
        int pieces = 0;
        int kinds = 0;
        int atHome = 0;
        for (int i = 0; i < counts.length; i++) {
            BigDecimal count = BigDecimal.valueOf(counts[i]);
            kcal = kcal.add(items.get(i).energyKcal().multiply(count));
            protein = protein.add(items.get(i).proteinG().multiply(count));
            grams = grams.add(items.get(i).grams().multiply(count));
            cost = cost.add(items.get(i).cost().multiply(count));
            pieces += counts[i];
            kinds += counts[i] > 0 ? 1 : 0;
            atHome += items.get(i).atHome() ? counts[i] : 0;
        }
        return new Combination(counts, kcal, protein, grams, cost, pieces, kinds, atHome);
    }

    BigDecimal mostKcal() {
        return all.stream().map(Combination::kcal).reduce(BigDecimal.ZERO, BigDecimal::max);
    }

    /** Every combination within kinds and budget, whatever its energy and protein. */
    List<Combination> affordable(SnackAsk ask) {
        return all.stream()
                .filter(one -> one.kinds() <= ask.mostKinds() && isWithin(one.cost(), ask.budget()))
                .toList();
    }

    /** Every combination that meets the ask, smallest first. */
    List<Combination> meeting(SnackAsk ask) {
        return affordable(ask).stream()
                .filter(one -> reaches(one.kcal(), one.protein(), ask) && isWithin(one.kcal(), ask.mostKcal()))
                .sorted(order(ask.smallest()))
                .toList();
    }

    /** Every combination that meets the ask and has no piece to spare, smallest first. */
    List<Combination> withoutSpare(SnackAsk ask) {
        return meeting(ask).stream().filter(one -> !hasSpare(one, ask)).toList();
    }

    private boolean hasSpare(Combination one, SnackAsk ask) {
        for (int i = 0; i < items.size(); i++) {
            BigDecimal kcal = one.kcal().subtract(items.get(i).energyKcal());
            BigDecimal protein = one.protein().subtract(items.get(i).proteinG());
            if (one.counts()[i] > 0 && reaches(kcal, protein, ask)) {
                return true;
            }
        }
        return false;
    }

    private static boolean reaches(BigDecimal kcal, BigDecimal protein, SnackAsk ask) {
        return kcal.compareTo(ask.energyKcal()) >= 0 && protein.compareTo(ask.proteinG()) >= 0;
    }

    static boolean isWithin(BigDecimal value, Optional<BigDecimal> most) {
        return most.isEmpty() || value.compareTo(most.get()) <= 0;
    }

    /** The three figures of a reading. */
    static Comparator<Combination> figures(Smallest smallest) {
        return switch (smallest) {
            case ENERGY ->
                Comparator.comparing(Combination::kcal)
                        .thenComparing(Combination::pieces)
                        .thenComparing(Combination::cost);
            case PIECES ->
                Comparator.comparing(Combination::pieces)
                        .thenComparing(Combination::kcal)
                        .thenComparing(Combination::cost);
            case COST ->
                Comparator.comparing(Combination::cost)
                        .thenComparing(Combination::kcal)
                        .thenComparing(Combination::pieces);
            case GRAMS ->
                Comparator.comparing(Combination::grams)
                        .thenComparing(Combination::kcal)
                        .thenComparing(Combination::cost);
        };
    }

    private Comparator<Combination> order(Smallest smallest) {
        return figures(smallest)
                .thenComparing(Combination::atHome, Comparator.reverseOrder())
                .thenComparing(this::codes, Enumeration::compareInTurn);
    }

    /** The code of every piece, in alphabetical order. */
    private List<String> codes(Combination one) {
        List<String> codes = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            for (int n = 0; n < one.counts()[i]; n++) {
                codes.add(items.get(i).code());
            }
        }
        return codes;
    }

    private static int compareInTurn(List<String> one, List<String> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            int order = one.get(i).compareTo(other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(one.size(), other.size());
    }

    /** The combination of an answer, found by its counts. */
    Combination of(SnackAnswer answer) {
        int[] counts = items.stream()
                .mapToInt(item -> answer.counts().getOrDefault(item.code(), 0))
                .toArray();
        return combination(counts);
    }

    /** The figures of an answer as it states them, without its counts. */
    static Combination figuresOf(SnackAnswer answer) {
        return new Combination(
                new int[0],
                answer.energyKcal(),
                answer.proteinG(),
                answer.grams(),
                answer.cost(),
                answer.pieces(),
                answer.counts().size(),
                0);
    }
}
