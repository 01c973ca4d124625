package batchwright.book;

import batchwright.book.Book.Of;
import batchwright.book.Event.Bought;
import batchwright.book.KeptPlan.KeptPurchase;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the shopping for a kept plan is, by what the book says was bought since the plan was kept.
 *
 * @param lines in the order of the plan
 */
public record ShoppingSoFar(KeptPlan plan, List<Line> lines) {
    /** Nobody shops earlier for a plan of which the book line is not known. Our choice. */
    private static final int DAYS_AHEAD = 7;

    public ShoppingSoFar {
        lines = List.copyOf(lines);
    }

    /**
     * @param number in the plan, from 0
     * @param taken what was bought for it; empty when it is not taken yet
     */
    public record Line(int number, KeptPurchase planned, List<Of<Bought>> taken) {
        public boolean isTaken() {
            return !taken.isEmpty();
        }

        /** As purchased; below zero when less was taken than planned. */
        public BigDecimal gramsOver() {
            return taken.stream()
                    .map(bought -> bought.event().grams().multiply(BigDecimal.valueOf(bought.event().count())))
                    .reduce(BigDecimal.ZERO, BigDecimal::add)
                    .subtract(planned.allGrams());
        }

        /** What was paid for it, as far as the book says. */
        public BigDecimal paid() {
            return taken.stream()
                    .flatMap(bought -> bought.event().price().stream())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        /** Whether just what was planned was taken. */
        boolean isAsPlanned(Bought bought) {
            return isOf(bought)
                    && bought.count() == planned.packs()
                    && bought.grams().compareTo(planned.grams()) == 0;
        }

        boolean isOf(Bought bought) {
            return bought.food().equals(planned.food());
        }
    }

    /** What was taken just as planned is found first; of the rest each line goes to the first of its food that lacks something. */
    public static ShoppingSoFar of(KeptPlan plan, Book book) {
        List<Of<Bought>> bought = new ArrayList<>(book.all(Bought.class)
                .filter(of -> of.entry().line() > plan.kept().bookLine())
                .filter(of -> !of.day().isBefore(plan.cookingDay().minusDays(DAYS_AHEAD)))
                .filter(of -> !of.day().isAfter(plan.date(plan.days())))
                .toList());
        List<Line> lines = new ArrayList<>();
        for (KeptPurchase planned : plan.shopping()) {
            Line line = new Line(lines.size(), planned, List.of());
            List<Of<Bought>> same =
                    bought.stream().filter(of -> line.isAsPlanned(of.event())).limit(1).toList();
            bought.removeAll(same);
            lines.add(new Line(line.number(), planned, same));
        }
        for (Of<Bought> other : bought) {
            lines.stream()
                    .filter(line -> line.isOf(other.event()) && (!line.isTaken() || line.gramsOver().signum() < 0))
                    .findFirst()
                    .ifPresent(line -> lines.set(line.number(), with(line, other)));
        }
        return new ShoppingSoFar(plan, lines);
    }

    private static Line with(Line line, Of<Bought> more) {
        List<Of<Bought>> taken = new ArrayList<>(line.taken());
        taken.add(more);
        return new Line(line.number(), line.planned(), taken);
    }

    /** What is not taken yet, in minor units. */
    public long leftToPayMinor() {
        return lines.stream()
                .filter(line -> !line.isTaken())
                .mapToLong(line -> line.planned().costMinor())
                .sum();
    }

    /** What the book says was paid. */
    public BigDecimal paid() {
        return lines.stream().map(Line::paid).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
