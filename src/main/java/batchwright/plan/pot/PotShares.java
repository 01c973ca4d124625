package batchwright.plan.pot;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Shares a pot out so that the sum over all containers of weight x (grams - best)^2 is least, all of the pot is used, and no container gets
 * less or more than it may.
 *
 * <p>This is a quadratic program with one row, so it has a closed form. At the optimum all shares that are not at a bound have one price
 * p: grams = best + p / weight (Karush-Kuhn-Tucker; the number of containers stands on both sides and drops out). What is used
 * grows with p, in straight pieces that end where a share meets a bound. So the piece in which the pot is just used up is found by
 * trying all ends, and p on it by proportion.
 */
public final class PotShares {
    private PotShares() {}

    /**
     * Grams of each container, in the order of the claims. Where the pot holds less than all the least, or more than all the most, these
     * are what comes out, and the sum is not the pot.
     *
     * @param grams in the pot
     */
    public static List<Double> of(double grams, List<Claim> claims) {
        double[] ends = claims.stream()
                .flatMapToDouble(claim -> DoubleStream.of(
                        claim.weight() * (claim.least() - claim.best()),
                        claim.weight() * (claim.most() - claim.best())))
                .sorted()
                .toArray();
        double price = ends.length == 0 ? 0 : ends[0];
        for (int i = 1; i < ends.length; i++) {
            double before = used(ends[i - 1], claims);
            double after = used(ends[i], claims);
            if (before < grams) {
                price = after <= grams || after == before
                        ? ends[i]
                        : ends[i - 1] + (ends[i] - ends[i - 1]) * (grams - before) / (after - before);
            }
        }
        double found = price;
        return claims.stream().map(claim -> claim.at(found)).toList();
    }

    private static double used(double price, List<Claim> claims) {
        return claims.stream()
                .mapToDouble(claim -> claim.containers() * claim.at(price))
                .sum();
    }
}
