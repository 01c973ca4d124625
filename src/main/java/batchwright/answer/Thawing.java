package batchwright.answer;

import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.plan.Fill;
import batchwright.plan.Session;
import java.math.BigDecimal;

/**
 * When a frozen container goes from the freezer into the fridge: the evening before it is eaten, and one of about a litre two evenings
 * before (common practice: half a litre thaws in 18-24 h). About a litre is what is nearer to that than to half of it: our choice.
 */
public final class Thawing {
    /** How long containers take, for those who read advice. */
    static final String ADVICE = "the evening before, one of about a litre two evenings before";

    private static final BigDecimal ABOUT_A_LITRE = BigDecimal.valueOf(750); // ml

    private Thawing() {}

    /**
     * How many evenings before it is eaten, 1 or 2; a container is frozen for one night at least, so that its days in the fridge do not add up.
     *
     * @param day on which it is eaten, the cooking day being 1
     */
    public static int evenings(Fill fill, int day) {
        return evenings(fill.perContainer().get(Nutrient.VOLUME), day);
    }

    /** The same by the room that a container takes. */
    public static int evenings(BigDecimal millilitres, int day) {
        return Math.max(1, Math.min(evenings(millilitres), day - 2));
    }

    /** The same where nothing is known of the day. */
    public static int evenings(BigDecimal millilitres) {
        return isSlow(millilitres) ? 2 : 1;
    }

    /** Whether some container of the dish takes two evenings. */
    static boolean isSlow(Session session, Dish dish) {
        return session.batches().stream()
                .filter(batch -> batch.dish().equals(dish))
                .flatMap(batch -> batch.fills().stream())
                .anyMatch(Thawing::isSlow);
    }

    private static boolean isSlow(Fill fill) {
        return isSlow(fill.perContainer().get(Nutrient.VOLUME));
    }

    private static boolean isSlow(BigDecimal millilitres) {
        return millilitres.compareTo(ABOUT_A_LITRE) >= 0;
    }
}
