package batchwright.solve.session;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.plan.PantryLeft;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Plans any number of cooking sessions by a planner of one. For several, two ways are tried, and the cheaper is taken: one session after
 * another, each the cheapest with what those before it leave; and the same session again and again ({@link OneForAll}). Neither need be
 * the cheapest there is: an easier question for each session ({@link EachAlone}) tells how much cheaper another could be at most.
 */
public final class SessionsPlanner implements Planner {
    /** How often the easier questions are asked, each time with what the plans so far show, in the time that is left. */
    private static final int ROUNDS = 2;

    private final Planner one;

    /** @param one plans one cooking session */
    public SessionsPlanner(Planner one) {
        this.one = one;
    }

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        int sessions = request.cooking().sessions();
        if (sessions == 1) {
            return one.plan(request, watch);
        }
        boolean again = request.days() % sessions == 0 && !request.cooking().vary();
        int easier = EachAlone.of(request, Set.of()).size();
        int questions = sessions + easier + (again ? 1 : 0);
        var search = new Search(request, new SharedPatience(one, watch, request.patience(), questions), watch);
        search.oneAfterAnother();
        if (again && !search.none) {
            search.again();
        }
        return search.result();
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    /** For several sessions no quicker way is known than planning them. */
    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        if (request.cooking().sessions() == 1) {
            return one.possible(request, watch);
        }
        PlanResult result = plan(request, new Watch.StopOnly(watch));
        return result.best().isPresent()
                ? Possible.YES
                : result instanceof PlanResult.NoPlan ? Possible.NO : Possible.UNKNOWN;
    }

    private static final class Search {
        private final PlanRequest request;
        private final SharedPatience patience;
        private final Watch watch;
        private Optional<List<Session>> best = Optional.empty();
        private Optional<PlanResult.Stuck> stuck = Optional.empty();
        private boolean none;

        Search(PlanRequest request, SharedPatience patience, Watch watch) {
            this.request = request;
            this.patience = patience;
            this.watch = watch;
        }

        private void oneAfterAnother() {
            List<Session> sessions = new ArrayList<>();
            Map<Food, List<Lot>> atHome = request.kitchen().pantry();
            for (int session : request.sessions()) {
                PlanRequest here = session(session, atHome, sessions);
                PlanResult result = patience.plan(here);
                Optional<Plan> plan = result.best();
                if (plan.isEmpty()) {
                    stuck = Optional.of(new PlanResult.Stuck(request.firstDay(session), here, result.proof()));
                    none = result instanceof PlanResult.NoPlan && (session == 1 || impossible(session));
                    return;
                }
                sessions.add(plan.get().first().withRequest(here));
                if (session < request.cooking().sessions()) {
                    atHome = PantryLeft.on(request.cookingDay(session + 1), sessions.get(session - 1));
                }
            }
            take(Basket.of(request, sessions));
        }

        private PlanRequest session(int session, Map<Food, List<Lot>> atHome, List<Session> before) {
            Kitchen kitchen = request.kitchen().on(request.cookingDay(session), atHome);
            Set<Dish> cooked = new LinkedHashSet<>();
            if (request.cooking().vary() && !before.isEmpty()) {
                before.get(before.size() - 1).batches().forEach(batch -> cooked.add(batch.dish()));
            }
            Map<String, Dish> dishes = new LinkedHashMap<>(kitchen.dishes());
            cooked.forEach(dish -> dishes.remove(dish.id()));
            return request.withBudget(Optional.empty())
                    .withCooking(request.cooking().once())
                    .withDays(request.days(session))
                    .withKitchen(kitchen.withDishes(dishes));
        }

        /** Whether the session has no plan even with all that could be at home then, and whatever was cooked before. */
        private boolean impossible(int session) {
            return patience.impossible(session(session, request.kitchen().pantry(), List.of()));
        }

        /** The proof and the shopping of the one session are not those of any of the sessions. */
        private void again() {
            Optional<Session> again = patience.plan(OneForAll.of(request))
                    .best()
                    .map(plan -> plan.first().withProof(Proof.NONE));
            again.map(session -> session.withShopping(List.of()))
                    .ifPresent(meals -> take(Basket.of(
                            request,
                            request.sessions().stream()
                                    .map(session -> meals.withRequest(session(session, Map.of(), List.of())))
                                    .toList())));
        }

        private void take(Optional<List<Session>> sessions) {
            if (sessions.isPresent()
                    && best.map(b -> cost(b).compareTo(cost(sessions.get())) > 0)
                            .orElse(true)) {
                best = sessions;
                watch.found(cost(sessions.get()));
            }
        }

        private PlanResult result() {
            if (none) {
                return new PlanResult.NoPlan(List.of(), patience.proof(Money.ZERO, Money.ZERO), stuck);
            }
            Money bound = bound();
            if (best.isEmpty()) {
                return new PlanResult.GaveUp(List.of(), patience.proof(Money.ZERO, bound), stuck);
            }
            Money cost = cost(best.get());
            boolean proven = bound.compareTo(cost) >= 0;
            Proof proof = patience.proof(cost, proven ? cost : bound);
            Optional<Money> tooDear = request.budget().filter(budget -> cost.compareTo(budget) > 0);
            if (tooDear.isPresent()) {
                return proof.lowerBound().compareTo(tooDear.get()) > 0
                        ? new PlanResult.NoPlan(List.of(), proof)
                        : new PlanResult.GaveUp(List.of(), proof);
            }
            var plan = new Plan(best.get(), proof);
            return proven ? new PlanResult.Planned(plan) : new PlanResult.GaveUp(List.of(plan), proof);
        }

        /** No sessions cost less than this. */
        private Money bound() {
            var choice = new PacksOrWeight(request);
            best.ifPresent(sessions -> sessions.forEach(s -> choice.seen(s, 1)));
            Money bound = Money.ZERO;
            for (int round = 0; round < ROUNDS; round++) {
                Set<Food> inPacks = round == 0 ? Set.of() : choice.inPacks();
                Money here = patience.bound(EachAlone.of(request, inPacks), choice::seen);
                bound = here.compareTo(bound) > 0 ? here : bound;
                watch.bound(bound);
            }
            return bound;
        }

        private static Money cost(List<Session> sessions) {
            return new Plan(sessions, Proof.NONE).cost();
        }
    }
}
