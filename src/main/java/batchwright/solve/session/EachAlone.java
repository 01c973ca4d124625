package batchwright.solve.session;

import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import batchwright.food.Shops;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An easier question for each session by itself; what they cost at least together, all sessions cost at least. In it all that is at
 * home is there for every session, and food that keeps is sold in small shares of a pack, at the price per gram of the pack that is
 * cheapest by weight. So whatever a session takes of packs that are shared or left over costs it no more than its weight; and the sum
 * is no more than what is paid, because whole packs cost at least their weight. What does not keep is bought for one session anyway, in
 * whole packs.
 *
 * <p>Trips to shops cost nothing here: a session may eat from what another bought.
 *
 * <p>A share is paid as a whole, so each session gets one share of each food for nothing. Money is counted in shares of a cent.
 *
 * <p>Of some foods that keep, whole packs may be counted instead, each at one Nth of its price for N sessions: the packs that are bought
 * for all sessions together are enough for any one of them, so its cheapest packs cost no more than these, and N Nths of that are no more
 * than what is paid. That tells more where a session needs little of a pack.
 */
final class EachAlone {
    private static final int SHARES = 10_000;

    private EachAlone() {}

    /**
     * How often each of these questions counts; sessions that are alike are one question.
     *
     * @param inPacks foods of which whole packs are counted, if they keep
     */
    static Map<PlanRequest, Integer> of(PlanRequest request, Set<Food> inPacks) {
        Map<Alike, Integer> times = new LinkedHashMap<>();
        for (int session : request.sessions()) {
            Kitchen kitchen = request.kitchen();
            Map<Food, BigDecimal> atHome = new LinkedHashMap<>();
            kitchen.pantry()
                    .keySet()
                    .forEach(food -> atHome.put(food, kitchen.pantryGrams(food, request.cookingDay(session))));
            times.merge(new Alike(request.days(session), atHome), 1, Integer::sum);
        }
        Map<PlanRequest, Integer> questions = new LinkedHashMap<>();
        times.forEach((alike, count) -> questions.put(question(request, alike, inPacks), count));
        return questions;
    }

    /** What costs so much in such a question costs at least so many cents. */
    static Money cents(long parts) {
        return new Money((parts + SHARES - 1) / SHARES);
    }

    private record Alike(int days, Map<Food, BigDecimal> atHome) {}

    private static PlanRequest question(PlanRequest request, Alike alike, Set<Food> inPacks) {
        Kitchen kitchen = request.kitchen();
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        Map<Food, List<Lot>> pantry = new LinkedHashMap<>();
        alike.atHome.forEach((food, grams) -> pantry.put(food, new ArrayList<>(List.of(Lot.of(grams)))));
        kitchen.packs().forEach((food, sold) -> {
            if (food.perishable() || sold.isEmpty()) {
                packs.put(food, sold.stream().map(EachAlone::whole).toList());
                return;
            }
            if (inPacks.contains(food)) {
                packs.put(
                        food,
                        sold.stream()
                                .map(pack -> part(pack, request.cooking().sessions()))
                                .toList());
                return;
            }
            Pack share = share(sold.stream()
                    .min(Comparator.comparing(EachAlone::centsAGram))
                    .orElseThrow());
            packs.put(food, List.of(share));
            pantry.computeIfAbsent(food, f -> new ArrayList<>()).add(Lot.of(share.grams()));
        });
        return request.withBudget(Optional.empty())
                .withCooking(request.cooking().once())
                .withDays(alike.days)
                .withKitchen(kitchen.withPacks(packs).with(Shops.FREE).on(kitchen.cookingDay(), pantry));
    }

    private static BigDecimal centsAGram(Pack pack) {
        return BigDecimal.valueOf(pack.price().minor()).divide(pack.grams(), MathContext.DECIMAL64);
    }

    /** A whole pack for an Nth of its price, rounded down. */
    private static Pack part(Pack pack, int sessions) {
        return pack(pack, pack.grams(), new Money(pack.price().minor() * SHARES / sessions));
    }

    private static Pack whole(Pack pack) {
        return pack(pack, pack.grams(), pack.price().times(SHARES));
    }

    /** For so many shares of a cent as the pack costs cents. */
    private static Pack share(Pack pack) {
        return pack(pack, pack.grams().movePointLeft(4), pack.price());
    }

    private static Pack pack(Pack pack, BigDecimal grams, Money price) {
        return new Pack(
                pack.food(),
                pack.shop(),
                pack.label(),
                Contents.of(grams),
                price,
                Optional.empty(),
                pack.seen(),
                pack.note());
    }
}
