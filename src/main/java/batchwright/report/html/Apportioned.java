package batchwright.report.html;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Amounts as whole numbers that add up to their sum, which is rounded half up. Each is rounded down, and those with the largest
 * remainders get the units that are missing; so no figure is off by 1 or more, and what is printed adds up.
 */
final class Apportioned {
    private Apportioned() {}

    /** @param amounts at least 0 */
    static List<Integer> of(List<BigDecimal> amounts) {
        BigDecimal sum = amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<Integer> whole = new ArrayList<>();
        amounts.forEach(
                amount -> whole.add(amount.setScale(0, RoundingMode.FLOOR).intValueExact()));
        int missing = sum.setScale(0, RoundingMode.HALF_UP).intValueExact()
                - whole.stream().mapToInt(Integer::intValue).sum();
        IntStream.range(0, amounts.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> amounts.get(i).remainder(BigDecimal.ONE))
                        .reversed())
                .limit(missing)
                .forEach(i -> whole.set(i, whole.get(i) + 1));
        return whole;
    }
}
