package batchwright.page.shop;

import batchwright.answer.PlanAnswer;
import batchwright.app.FailedAudit;
import batchwright.app.MakePlan;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.KeepPlan;
import batchwright.app.book.PlanWithout;
import batchwright.book.KeptPlan;
import batchwright.book.KeptSession;
import batchwright.book.ShoppingSoFar;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.page.Visit;
import batchwright.page.guard.Visitor;
import batchwright.plan.Watch;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.html.web.Frame;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.WithoutPage;
import batchwright.report.plan.KeptPlanJson;
import batchwright.report.plan.PlanJson;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A food is not there: the plan is worked out without it, and kept if the shopper likes it. */
final class NotThere {
    private static final String HERE = "/shop/without";

    private final MakePlan plans;
    private final Map<Visitor, Search> searches = new ConcurrentHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        var thread = new Thread(work, "not there");
        thread.setDaemon(true);
        return thread;
    });

    /** What a search came to. */
    private record Found(Optional<PlanAnswer> answer, String refused) {}

    /** One search. */
    private static final class Search implements Watch {
        private final KeptSession session;
        private final String food;
        private volatile Optional<Found> result = Optional.empty();
        private volatile boolean stopped;

        Search(KeptSession session, String food) {
            this.session = session;
            this.food = food;
        }

        @Override
        public boolean stop() {
            return stopped;
        }
    }

    NotThere(MakePlan plans) {
        this.plans = plans;
    }

    void ask(Visit visit, ShoppingSoFar soFar, ShoppingSoFar.Line line) {
        Workspace workspace = visit.workspace();
        KeptSession session = workspace
                .keptPlans()
                .next(visit.files().today())
                .filter(next -> next.plan().equals(soFar.plan()))
                .orElseThrow(() -> Refused.because("this list is not the one that holds any more", "Reload the page."));
        var search = new Search(session, line.planned().food());
        Optional.ofNullable(searches.put(visit.visitor(), search)).ifPresent(before -> before.stopped = true);
        worker.execute(() -> run(search, workspace));
        visit.go(HERE);
    }

    private void run(Search search, Workspace workspace) {
        Found found;
        try {
            found = new Found(
                    Optional.of(new PlanWithout(plans, workspace, search.session).answer(search.food, search)), "");
        } catch (Refused refused) {
            found = new Found(Optional.empty(), ShopWords.sentences(refused));
        } catch (FailedAudit audit) {
            found = new Found(
                    Optional.empty(), "A fault of ours: the plan did not pass its audit, so it is not shown.");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            found = new Found(Optional.empty(), "Something went wrong inside the program; no plan is shown.");
        }
        search.result = Optional.of(found);
    }

    private Search search(Visit visit) {
        return Optional.ofNullable(searches.get(visit.visitor()))
                .orElseThrow(() -> Refused.because(
                        "nothing was said to be missing", "Go to the list, and say what is not there."));
    }

    void show(Visit visit) {
        Search search = search(visit);
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        String name = Optional.ofNullable(kitchen.foods().get(search.food))
                .map(Food::name)
                .orElse(search.food);
        Frame frame = visit.frame(Place.SHOP, "Without " + name);
        visit.show(
                "without",
                search.result
                        .map(found -> found(frame, search, found, workspace, kitchen))
                        .orElseGet(() -> WithoutPage.working(frame)));
    }

    private static WithoutPage found(Frame frame, Search search, Found found, Workspace workspace, Kitchen kitchen) {
        if (found.answer().isEmpty()) {
            return WithoutPage.none(frame, found.refused());
        }
        PlanAnswer answer = found.answer().get();
        return answer.plan()
                .flatMap(plan -> KeptPlanJson.read(json(answer), 1))
                .map(after -> of(frame, search, after, answer, workspace, kitchen))
                .orElseGet(
                        () -> WithoutPage.none(
                                frame,
                                "No plan was found without it. Take something like it, look in another shop, or loosen the plan at the desk."));
    }

    private static WithoutPage of(
            Frame frame, Search search, KeptPlan after, PlanAnswer answer, Workspace workspace, Kitchen kitchen) {
        return WithoutPage.of(
                frame,
                search.session,
                ShoppingSoFar.of(search.session.plan(), workspace.book()),
                after,
                answer.status() == PlanAnswer.Status.PLANNED,
                kitchen);
    }

    private static String json(PlanAnswer answer) {
        return PlanJson.of(answer, KitchenClock.FROM_ZERO);
    }

    void keep(Visit visit) {
        Search search = search(visit);
        PlanAnswer answer = search.result
                .flatMap(Found::answer)
                .filter(a -> a.plan().isPresent())
                .orElseThrow(() -> Refused.because("there is no plan without it yet", "Wait until it is worked out."));
        new KeepPlan(visit.workspace()).keep(answer.kitchen().cookingDay(), json(answer));
        searches.remove(visit.visitor(), search);
        visit.go("/shop", "Kept: this is what is still to be bought for it.");
    }

    void close() {
        searches.values().forEach(search -> search.stopped = true);
        worker.shutdownNow();
    }
}
