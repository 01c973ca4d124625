package batchwright.page.desk;

import batchwright.answer.PlanAnswer;
import batchwright.app.MakePlan;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.KeepPlan;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.page.KnownEaters;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.page.guard.Visitor;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.html.HtmlReport;
import batchwright.report.html.ReportStyle;
import batchwright.report.html.web.DeskAnswer;
import batchwright.report.html.web.DeskPage;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.plan.PlanJson;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** At the desk: everything that is asked is asked again at once, and the answer comes to the page by itself. */
public final class DeskSituation implements Situation {
    private static final String HERE = "/desk";
    private static final int KNOCK_SECONDS = 15;
    private static final ReportStyle STYLE =
            new ReportStyle(new LabelStyle(LabelSheet.of("a4-2x7").orElseThrow(), LabelRounding.US));

    private final MakePlan plans;
    private final Map<Visitor, DeskBoard> boards = new ConcurrentHashMap<>();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        var thread = new Thread(work, "knock");
        thread.setDaemon(true);
        return thread;
    });

    public DeskSituation(MakePlan plans) {
        this.plans = plans;
    }

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, board(visit).state().wish(), List.of()))
                .get(
                        HERE + "/answer",
                        visit -> visit.show(
                                "deskanswer", page(visit, board(visit).state().wish(), List.of())))
                .get(HERE + "/report", this::report)
                .post(HERE, this::ask)
                .post(HERE + "/keep", this::keep)
                .events(HERE + "/events", (visit, client) -> board(visit).listen(client));
        var unused = clock.scheduleAtFixedRate(
                () -> boards.values().forEach(DeskBoard::knock), KNOCK_SECONDS, KNOCK_SECONDS, TimeUnit.SECONDS);
    }

    private DeskBoard board(Visit visit) {
        return boards.computeIfAbsent(visit.visitor(), who -> new DeskBoard(plans));
    }

    /** Puts an eater at the desk and begins to search. */
    public void begin(Visit visit, String eater) {
        DeskBoard board = board(visit);
        board.ask(board.state().wish().withEaters(List.of(eater)), visit.workspace());
    }

    private void ask(Visit visit) {
        Workspace workspace = visit.workspace();
        DeskWish wish = DeskWish.of(
                visit,
                new KnownEaters(workspace).ids(),
                List.copyOf(workspace.kitchen().dishes().keySet()));
        List<Trouble> troubles = wish.troubles();
        if (troubles.isEmpty()) {
            board(visit).ask(wish, workspace);
        }
        if (visit.isByScript()) {
            if (troubles.isEmpty()) {
                visit.done();
            } else {
                visit.wrong(troubles);
            }
        } else if (troubles.isEmpty()) {
            visit.go(HERE);
        } else {
            show(visit, wish, troubles);
        }
    }

    private void show(Visit visit, DeskWish wish, List<Trouble> troubles) {
        DeskPage page = page(visit, wish, troubles);
        if (troubles.isEmpty()) {
            visit.show("desk", page);
        } else {
            visit.showWrong("desk", page);
        }
    }

    private DeskPage page(Visit visit, DeskWish wish, List<Trouble> troubles) {
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        DeskBoard.State state = board(visit).state();
        Optional<DeskAnswer> answer = state.found().map(found -> answer(found, state));
        return new DeskPage(
                visit.frame(Place.DESK, "Desk", troubles),
                choices(wish, workspace, kitchen),
                new DeskPage.Fields(
                        wish.days(),
                        wish.budget(),
                        wish.mostDishes(),
                        wish.sessions(),
                        kitchen.currency().toString()),
                state.found().isPresent() && state.working().isEmpty() ? state.number() : -1,
                state.working(),
                answer,
                planned(state).isPresent() && visit.files().isOwn());
    }

    private static DeskPage.Choices choices(DeskWish wish, Workspace workspace, Kitchen kitchen) {
        var eaters = new KnownEaters(workspace);
        return new DeskPage.Choices(
                eaters.ids().stream()
                        .map(id -> new DeskPage.Ticked(
                                id, eaters.name(id, kitchen), wish.eaters().contains(id)))
                        .toList(),
                kitchen.dishes().values().stream()
                        .sorted(Comparator.comparing(Dish::name))
                        .map(dish -> new DeskPage.DishChoice(dish.id(), dish.name(), wish.wishFor(dish.id())))
                        .toList());
    }

    private static Optional<PlanAnswer> planned(DeskBoard.State state) {
        return state.found()
                .flatMap(DeskBoard.Found::answer)
                .filter(a -> a.plan().isPresent());
    }

    private static DeskAnswer answer(DeskBoard.Found found, DeskBoard.State state) {
        if (!found.refused().isEmpty()) {
            return DeskAnswer.refused(found.refused());
        }
        return found.answer()
                .map(answer -> DeskAnswer.of(found.first(), answer, state.before(), STYLE))
                .orElseGet(() -> DeskAnswer.nothingToCook(found.first()));
    }

    private PlanAnswer shown(Visit visit) {
        return planned(board(visit).state())
                .orElseThrow(() -> Refused.because("there is no plan on the desk", "Work one out first."));
    }

    private void keep(Visit visit) {
        PlanAnswer answer = shown(visit);
        String kept = new KeepPlan(visit.workspace())
                .keep(answer.kitchen().cookingDay(), PlanJson.of(answer, KitchenClock.FROM_ZERO));
        visit.go("/fridge", "Kept as " + kept + ": each day now goes by it.");
    }

    private void report(Visit visit) {
        visit.download(
                "plan.html",
                "text/html; charset=utf-8",
                HtmlReport.of(shown(visit), STYLE).getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void close() {
        clock.shutdownNow();
        boards.values().forEach(DeskBoard::close);
    }
}
