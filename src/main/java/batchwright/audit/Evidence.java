package batchwright.audit;

import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Lot;
import batchwright.food.Pack;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.plan.Seat;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/** A cooking session beside what was asked, and what its decisions come to when recomputed. */
record Evidence(PlanRequest request, Session session, Known known, Eaten eaten) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    static Evidence of(PlanRequest request, Session session) {
        var known = new Known(request);
        return new Evidence(request, session, known, new Eaten(session, known));
    }

    /** Every day of every eater at the table; the seat is the one that was asked for. */
    void days(BiConsumer<Seat, Day> look) {
        for (EaterDays eater : session.eaters()) {
            known.seat(eater.seat().eater()).ifPresent(seat -> eater.days().forEach(day -> look.accept(seat, day)));
        }
    }

    /** All days of an eater at the table. */
    List<Day> days(Seat seat) {
        List<Day> mine = new ArrayList<>();
        days((other, day) -> {
            if (other.equals(seat)) {
                mine.add(day);
            }
        });
        return mine;
    }

    void fills(BiConsumer<Batch, Fill> look) {
        session.batches().forEach(batch -> batch.fills().forEach(fill -> look.accept(batch, fill)));
    }

    /** Edible grams turned into grams as purchased. */
    BigDecimal asPurchased(Food food, BigDecimal edible) {
        return edible.multiply(HUNDRED).divide(HUNDRED.subtract(food.refusePercent()), Tolerance.DIGITS);
    }

    /** Day of the session, 1 being the cooking day. */
    LocalDate day(int number) {
        return request.kitchen().cookingDay().plusDays(number - 1L);
    }

    /** Grams at home as purchased that are not past their date when they are cooked. */
    BigDecimal atHome(Food food) {
        return atHome(food, day(1));
    }

    /** Grams at home as purchased that may be eaten on any day of the session. */
    BigDecimal keepsAtHome(Food food) {
        return atHome(food, day(request.days()));
    }

    private BigDecimal atHome(Food food, LocalDate on) {
        BigDecimal grams = BigDecimal.ZERO;
        for (Lot lot : request.kitchen().lotsOf(food)) {
            if (lot.useBy().isEmpty() || on.compareTo(lot.useBy().get()) <= 0) {
                grams = grams.add(lot.grams());
            }
        }
        return grams;
    }

    /** What the session takes from the pantry [g as purchased]: as much as it can, of what spoils only for batches. */
    BigDecimal fromPantry(Food food) {
        BigDecimal cooked = asPurchased(food, eaten.cooked().of(food));
        BigDecimal besides = asPurchased(food, eaten.besides().of(food));
        BigDecimal keeps = keepsAtHome(food);
        BigDecimal spoilingCooked = cooked.min(atHome(food).subtract(keeps));
        return spoilingCooked.add(keeps.min(cooked.subtract(spoilingCooked).add(besides)));
    }

    /** Grams in the packs of a food on the shopping list. */
    BigDecimal bought(Food food) {
        return session.shopping().stream()
                .filter(purchase -> purchase.food().equals(food))
                .map(this::bought)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Grams in the packs of a line of the shopping list. */
    BigDecimal bought(Purchase purchase) {
        BigDecimal grams = BigDecimal.ZERO;
        for (Map.Entry<Pack, Integer> line : purchase.packs().entrySet()) {
            grams = grams.add(grams(line.getKey()).multiply(BigDecimal.valueOf(line.getValue())));
        }
        return grams;
    }

    /** Grams of one pack, or of one step of loose goods, from what the files say of its units and their drained weight. */
    BigDecimal grams(Pack named) {
        Contents contents = known.pack(named).orElse(named).contents();
        BigDecimal one =
                contents.drainedGrams().isPresent() ? contents.drainedGrams().get() : contents.unitGrams();
        return BigDecimal.valueOf(contents.units()).multiply(one);
    }

    /** Checkout cost at the files' prices, and the trips to the shops [minor units]. */
    long costMinor() {
        return Math.addExact(
                tripsMinor(),
                session.shopping().stream().mapToLong(this::costMinor).sum());
    }

    /** What one line of the shopping list costs at the files' prices [minor units]. */
    long costMinor(Purchase purchase) {
        long minor = 0;
        for (Map.Entry<Pack, Integer> line : purchase.packs().entrySet()) {
            Pack pack = known.pack(line.getKey()).orElse(line.getKey());
            minor = Math.addExact(minor, Math.multiplyExact(priceMinor(pack), (long) line.getValue()));
        }
        return minor;
    }

    /** What the trips to the shops on the list cost [minor units]. */
    long tripsMinor() {
        Set<String> visited = new HashSet<>();
        for (Purchase purchase : session.shopping()) {
            purchase.packs().keySet().forEach(pack -> visited.add(pack.shop()));
        }
        return Math.multiplyExact(request.kitchen().shops().trip().minor(), (long) visited.size());
    }

    /** A sum as people write it. */
    String text(Money sum) {
        return request.kitchen().currency().text(sum);
    }

    /** Of loose goods, the fewest whole cents that are no less than the step's share of the stated price. */
    private static long priceMinor(Pack pack) {
        if (pack.loose().isEmpty()) {
            return pack.price().minor();
        }
        BigDecimal stated = BigDecimal.valueOf(pack.loose().get().price().minor());
        BigDecimal[] cents = stated.multiply(pack.contents().unitGrams())
                .divideAndRemainder(pack.loose().get().grams());
        return cents[0].longValueExact() + cents[1].signum();
    }
}
