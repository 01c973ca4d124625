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
import batchwright.plan.SessionsPlan;
import batchwright.plan.SessionsRequest;
import batchwright.plan.SessionsResult;
import batchwright.plan.SessionsResult.Outcome;
import batchwright.plan.SessionsResult.Stuck;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Plans several cooking sessions. Two ways are tried, and the cheaper is taken: one session after another, each the cheapest with what
 * those before it leave; and the same session again and again ({@link OneForAll}). Neither need be the cheapest there is: an easier
 * question for each session ({@link EachAlone}) tells how much cheaper another could be at most.
 */
public final class SessionsPlanner {
    /** So often the easier questions are asked, again with what the plans before tell, in the time that is left. */
    private static final int ROUNDS = 2;

    private final Planner planner;

    public SessionsPlanner(Planner planner) {
        this.planner = planner;
    }

    public SessionsResult plan(SessionsRequest request, Watch watch) {
        boolean again = request.evenly() && !request.vary() && request.cooks() > 1;
        int easier = EachAlone.of(request, Set.of()).size();
        int questions = request.cooks() + easier + (again ? 1 : 0);
        var patience = new SharedPatience(planner, watch, request.whole().patience(), questions);
        var search = new Search(request, patience, watch);
        search.oneAfterAnother();
        if (again && !search.none) {
            search.again();
        }
        return search.result();
    }

    private static final class Search {
        private final SessionsRequest request;
        private final SharedPatience patience;
        private final Watch watch;
        private Optional<List<Session>> best = Optional.empty();
        private Optional<Stuck> stuck = Optional.empty();
        private boolean none;

        Search(SessionsRequest request, SharedPatience patience, Watch watch) {
            this.request = request;
            this.patience = patience;
            this.watch = watch;
        }

        private void oneAfterAnother() {
            List<PlanRequest> requests = new ArrayList<>();
            List<Plan> plans = new ArrayList<>();
            Map<Food, List<Lot>> atHome = request.whole().kitchen().pantry();
            for (int session : request.sessions()) {
                PlanRequest here = session(session, atHome, plans);
                PlanResult result = patience.plan(here);
                Optional<Plan> plan = result.best();
                if (plan.isEmpty()) {
                    stuck = Optional.of(new Stuck(request.firstDay(session), here, result.proof()));
                    none = result instanceof PlanResult.NoPlan && (session == 1 || impossible(session));
                    return;
                }
                requests.add(here);
                plans.add(plan.get());
                if (session < request.cooks()) {
                    atHome = PantryLeft.on(request.cookingDay(session + 1), here, plan.get());
                }
            }
            take(Basket.of(request, requests, plans));
        }

        private PlanRequest session(int session, Map<Food, List<Lot>> atHome, List<Plan> before) {
            Kitchen kitchen = request.whole().kitchen().on(request.cookingDay(session), atHome);
            Set<Dish> cooked = new LinkedHashSet<>();
            if (request.vary() && !before.isEmpty()) {
                before.get(before.size() - 1).batches().forEach(batch -> cooked.add(batch.dish()));
            }
            Map<String, Dish> dishes = new LinkedHashMap<>(kitchen.dishes());
            cooked.forEach(dish -> dishes.remove(dish.id()));
            return request.whole()
                    .withBudget(Optional.empty())
                    .withDays(request.days(session))
                    .withKitchen(kitchen.withDishes(dishes));
        }

        /** Whether the session has no plan even with all that could be at home then, and whatever was cooked before. */
        private boolean impossible(int session) {
            return patience.impossible(
                    session(session, request.whole().kitchen().pantry(), List.of()));
        }

        private void again() {
            PlanRequest one = OneForAll.of(request);
            Optional<Plan> plan = patience.plan(one).best();
            List<PlanRequest> requests = request.sessions().stream()
                    .map(session -> session(session, Map.of(), List.of()))
                    .toList();
            // The proof and the shopping of the one are not those of any session.
            plan.map(p -> new Plan(p.eaters(), p.batches(), List.of(), Proof.NONE))
                    .ifPresent(p -> take(Basket.of(request, requests, Collections.nCopies(request.cooks(), p))));
        }

        private void take(Optional<List<Session>> sessions) {
            if (sessions.isPresent()
                    && best.map(b -> cost(b).compareTo(cost(sessions.get())) > 0)
                            .orElse(true)) {
                best = sessions;
                watch.found(cost(sessions.get()));
            }
        }

        private SessionsResult result() {
            if (none) {
                return new SessionsResult(
                        Outcome.NO_PLAN, Optional.empty(), patience.proof(Money.ZERO, Money.ZERO), stuck);
            }
            Money bound = bound();
            if (best.isEmpty()) {
                return new SessionsResult(
                        Outcome.NOT_PROVEN, Optional.empty(), patience.proof(Money.ZERO, bound), stuck);
            }
            Money cost = cost(best.get());
            boolean proven = bound.compareTo(cost) >= 0;
            Proof proof = patience.proof(cost, proven ? cost : bound);
            Optional<Money> tooDear = request.whole().budget().filter(budget -> cost.compareTo(budget) > 0);
            if (tooDear.isPresent()) {
                boolean never = proof.lowerBound().compareTo(tooDear.get()) > 0;
                return new SessionsResult(
                        never ? Outcome.NO_PLAN : Outcome.NOT_PROVEN, Optional.empty(), proof, Optional.empty());
            }
            return new SessionsResult(
                    proven ? Outcome.PLANNED : Outcome.NOT_PROVEN,
                    Optional.of(new SessionsPlan(best.get(), proof)),
                    proof,
                    Optional.empty());
        }

        /** No sessions cost less than this. */
        private Money bound() {
            var choice = new PacksOrWeight(request);
            best.ifPresent(sessions -> sessions.forEach(s -> choice.seen(s.plan(), 1)));
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
            return new SessionsPlan(sessions, Proof.NONE).cost();
        }
    }
}
