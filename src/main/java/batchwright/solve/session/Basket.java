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
import batchwright.plan.SessionsRequest;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shops for sessions of which it is known what each cooks and eats. Of a food that keeps, the packs for all sessions together are
 * the cheapest, and each is bought when it is first needed; of one that does not, the packs of each session are. So where no food
 * at home has a date, no other shopping for the same meals costs less.
 */
final class Basket {
    /** Less than this is a rounding error. */
    private static final BigDecimal LEAST_GRAMS = new BigDecimal("0.000001");

    private final SessionsRequest request;
    private final List<PlanRequest> requests;
    private final List<Plan> meals;
    private final Map<Food, Deque<Pack>> planned = new HashMap<>();

    private Basket(SessionsRequest request, List<PlanRequest> requests, List<Plan> meals) {
        this.request = request;
        this.requests = requests;
        this.meals = meals;
    }

    /**
     * @param requests one for each session; what they say of the pantry is worked out again
     * @param meals a plan for each session; what they buy does not matter
     * @return empty when a food is not sold that is not enough at home
     */
    static Optional<List<Session>> of(SessionsRequest request, List<PlanRequest> requests, List<Plan> meals) {
        return new Basket(request, requests, meals).shop();
    }

    private Optional<List<Session>> shop() {
        List<Used> used = meals.stream().map(Used::of).toList();
        planTogether(used);
        List<Session> sessions = new ArrayList<>();
        boolean asBefore = true;
        Map<Food, List<Lot>> atHome = request.whole().kitchen().pantry();
        for (int s = 0; s < meals.size(); s++) {
            LocalDate day = request.cookingDay(s + 1);
            Kitchen kitchen = requests.get(s).kitchen().on(day, atHome);
            PlanRequest here = requests.get(s).withKitchen(kitchen);
            List<Purchase> list = new ArrayList<>();
            for (Food food : kitchen.foods().values()) {
                if (used.get(s).of(food).signum() > 0) {
                    Optional<Purchase> line = line(here, food, used.get(s));
                    if (line.isEmpty()) {
                        return Optional.empty();
                    }
                    list.add(line.get());
                }
            }
            Plan plan = new Plan(
                    meals.get(s).eaters(),
                    meals.get(s).batches(),
                    list,
                    meals.get(s).proof());
            asBefore = asBefore && packs(plan).equals(packs(meals.get(s)));
            sessions.add(new Session(request.firstDay(s + 1), here, asBefore ? plan : unproven(plan)));
            if (s + 1 < meals.size()) {
                atHome = PantryLeft.on(request.cookingDay(s + 2), here, plan);
            }
        }
        return Optional.of(sessions);
    }

    private static List<Map<Pack, Integer>> packs(Plan plan) {
        return plan.shopping().stream().map(Purchase::packs).toList();
    }

    /** The planner proved something of other shopping, or after other shopping. */
    private static Plan unproven(Plan plan) {
        Proof proof = plan.proof();
        return plan.withProof(new Proof(plan.cost(), Money.ZERO, proof.nodes(), proof.took()));
    }

    private void planTogether(List<Used> used) {
        Kitchen kitchen = request.whole().kitchen();
        for (Food food : kitchen.foods().values()) {
            boolean noDates =
                    kitchen.lotsOf(food).stream().allMatch(lot -> lot.useBy().isEmpty());
            if (!food.perishable() && noDates) {
                BigDecimal all = used.stream().map(u -> u.of(food)).reduce(BigDecimal.ZERO, BigDecimal::add);
                BigDecimal missing = all.subtract(kitchen.pantryGrams(food)).subtract(LEAST_GRAMS);
                planned.put(food, new ArrayDeque<>(PackCover.of(kitchen.packsOf(food), missing)));
            }
        }
    }

    private Optional<Purchase> line(PlanRequest here, Food food, Used used) {
        BigDecimal atHome = here.kitchen().pantryGrams(food);
        BigDecimal missing = used.of(food).subtract(atHome);
        BigDecimal missingBesides = used.besides(food).subtract(here.lastingGrams(food));
        BigDecimal needed = missing.max(missingBesides).subtract(LEAST_GRAMS);
        Map<Pack, Integer> packs = new LinkedHashMap<>();
        Deque<Pack> next = planned.getOrDefault(
                food, new ArrayDeque<>(PackCover.of(here.kitchen().packsOf(food), needed)));
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
