package batchwright.solve.session;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import batchwright.plan.PantryLeft;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Shops for sessions of which it is known what each cooks and eats. Of a food that keeps, the packs for all sessions together are
 * the cheapest, and each is bought when it is first needed; of one that does not, the packs of each session are. So where no food
 * at home has a date and trips to shops cost nothing, no other shopping of foods by weight or in packs costs less for the same meals.
 */
final class Basket {
    /** Less than this is a rounding error. */
    private static final BigDecimal LEAST_GRAMS = new BigDecimal("0.000001");

    private final PlanRequest request;
    private final List<Session> meals;
    private final Map<Food, Deque<Pack>> planned = new HashMap<>();

    private final Set<String> shops;

    private Basket(PlanRequest request, List<Session> meals, Set<String> shops) {
        this.request = request;
        this.meals = meals;
        this.shops = shops;
    }

    /**
     * @param meals one for each session: what it buys does not matter, and what it says of the pantry is worked out again
     * @return empty when a food is not sold that is not enough at home
     */
    static Optional<List<Session>> of(PlanRequest request, List<Session> meals) {
        return shops(request).stream()
                .flatMap(shops -> new Basket(request, meals, shops).shop().stream())
                .min(Comparator.comparing(sessions -> new Plan(sessions, Proof.NONE).cost()));
    }

    /** All shops; where trips cost anything, each alone and all but each, too. */
    private static List<Set<String>> shops(PlanRequest request) {
        Set<String> all = request.kitchen().shopNames();
        List<Set<String>> some = new ArrayList<>(List.of(all));
        if (request.kitchen().shops().tripsCost() && all.size() > 1) {
            for (String one : all) {
                Set<String> others = new LinkedHashSet<>(all);
                others.remove(one);
                some.add(Set.of(one));
                some.add(others);
            }
        }
        return some;
    }

    private List<Pack> sold(Kitchen kitchen, Food food) {
        return kitchen.packsOf(food).stream()
                .filter(pack -> shops.contains(pack.shop()))
                .toList();
    }

    private Optional<List<Session>> shop() {
        List<Used> used = meals.stream().map(Used::of).toList();
        planTogether(used);
        List<Session> sessions = new ArrayList<>();
        boolean asBefore = true;
        Map<Food, List<Lot>> atHome = request.kitchen().pantry();
        for (int session : request.sessions()) {
            Session before = meals.get(session - 1);
            Used here = used.get(session - 1);
            Kitchen kitchen = before.kitchen().on(request.cookingDay(session), atHome);
            PlanRequest asked = before.request().withKitchen(kitchen);
            List<Purchase> list = new ArrayList<>();
            for (Food food : kitchen.foods().values()) {
                if (here.of(food).signum() > 0) {
                    Optional<Purchase> line = line(asked, food, here);
                    if (line.isEmpty()) {
                        return Optional.empty();
                    }
                    list.add(line.get());
                }
            }
            Session shopped = before.withFirstDay(request.firstDay(session))
                    .withRequest(asked)
                    .withShopping(list);
            asBefore = asBefore && packs(shopped).equals(packs(before));
            sessions.add(asBefore ? shopped : unproven(shopped));
            if (session < request.cooking().sessions()) {
                atHome = PantryLeft.on(request.cookingDay(session + 1), shopped);
            }
        }
        return Optional.of(sessions);
    }

    private static List<Map<Pack, Integer>> packs(Session session) {
        return session.shopping().stream().map(Purchase::packs).toList();
    }

    /** The planner proved something of other shopping, or after other shopping. */
    private static Session unproven(Session session) {
        Proof proof = session.proof();
        return session.withProof(new Proof(session.cost(), Money.ZERO, proof.nodes(), proof.took()));
    }

    private void planTogether(List<Used> used) {
        Kitchen kitchen = request.kitchen();
        for (Food food : kitchen.foods().values()) {
            boolean noDates =
                    kitchen.lotsOf(food).stream().allMatch(lot -> lot.useBy().isEmpty());
            if (!food.perishable() && noDates) {
                BigDecimal all = atHand(used, food);
                BigDecimal missing = all.subtract(kitchen.pantryGrams(food)).subtract(LEAST_GRAMS);
                planned.put(food, new ArrayDeque<>(PackCover.of(sold(kitchen, food), missing)));
            }
        }
    }

    /** The most that is used up to any session, with what is to be at hand for that one: room to spare is there for the next. */
    private static BigDecimal atHand(List<Used> used, Food food) {
        BigDecimal before = BigDecimal.ZERO;
        BigDecimal most = BigDecimal.ZERO;
        for (Used here : used) {
            before = before.add(here.of(food));
            most = most.max(before.add(here.room(food)));
        }
        return most;
    }

    private Optional<Purchase> line(PlanRequest here, Food food, Used used) {
        BigDecimal atHome = here.kitchen().pantryGrams(food);
        BigDecimal missing = used.of(food).add(used.room(food)).subtract(atHome);
        BigDecimal missingBesides = used.besides(food).subtract(here.lastingGrams(food));
        BigDecimal needed = missing.max(missingBesides).subtract(LEAST_GRAMS);
        Map<Pack, Integer> packs = new LinkedHashMap<>();
        Deque<Pack> next =
                planned.getOrDefault(food, new ArrayDeque<>(PackCover.of(sold(here.kitchen(), food), needed)));
        while (needed.signum() > 0) {
            Pack pack = next.poll();
            if (pack == null) {
                return Optional.empty();
            }
            packs.merge(pack, 1, Integer::sum);
            needed = needed.subtract(pack.grams());
        }
        return Optional.of(Purchase.of(here, food, packs, used.of(food), used.cooked(food)));
    }
}
