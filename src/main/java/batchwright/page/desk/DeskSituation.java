package batchwright.page.desk;

import batchwright.answer.PlanAnswer;
import batchwright.app.InsightWanted;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.KeepPlan;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.page.guard.Visitor;
import batchwright.plan.TradeOff;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.html.HtmlReport;
import batchwright.report.html.ReportStyle;
import batchwright.report.html.web.DeskAnswer;
import batchwright.report.html.web.DeskPage;
import batchwright.report.html.web.DeskShown;
import batchwright.report.html.web.Frame;
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

    private static final InsightWanted PROTEIN = new InsightWanted(false, Optional.of(TradeOff.PROTEIN), false);
    private static final InsightWanted WHY = new InsightWanted(true, Optional.empty(), false);

    private final Map<Visitor, DeskBoard> boards = new ConcurrentHashMap<>();
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        var thread = new Thread(work, "knock");
        thread.setDaemon(true);
        return thread;
    });

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, board(visit).state().wish(), List.of()))
                .get(HERE + "/answer", this::answer)
                .get(HERE + "/report", this::report)
                .post(HERE, this::ask)
                .post(HERE + "/keep", this::keep)
                .post(
                        HERE + "/write",
                        visit -> MovesWritten.write(visit, board(visit).state().wish(), HERE))
                .post(HERE + "/protein", visit -> find(visit, PROTEIN))
                .post(HERE + "/why", visit -> find(visit, WHY))
                .events(HERE + "/events", (visit, client) -> board(visit).listen(client));
        var unused = clock.scheduleAtFixedRate(this::knock, KNOCK_SECONDS, KNOCK_SECONDS, TimeUnit.SECONDS);
    }

    /** Desks of browsers that were shut out are cleared. */
    private void knock() {
        boards.entrySet().removeIf(entry -> {
            boolean isOut = entry.getKey().isOut();
            if (isOut) {
                entry.getValue().close();
            }
            return isOut;
        });
        boards.values().forEach(DeskBoard::knock);
    }

    /** Begins to find out more; its answer comes to the page as that to a wish does. */
    private void find(Visit visit, InsightWanted wanted) {
        if (!board(visit).find(wanted)) {
            throw Refused.because(
                    "there is no plan to compare with", "Wait for the last answer, with one cooking session.");
        }
        if (visit.isByScript()) {
            visit.done();
        } else {
            visit.go(HERE);
        }
    }

    private DeskBoard board(Visit visit) {
        return boards.computeIfAbsent(visit.visitor(), who -> new DeskBoard());
    }

    /** Puts an eater at the desk and begins to search. */
    public void begin(Visit visit, String eater) {
        DeskBoard board = board(visit);
        board.ask(board.state().wish().withEaters(List.of(eater)), visit.workspace());
    }

    private void ask(Visit visit) {
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        DeskWish wish = DeskWish.of(
                visit,
                WrittenEater.all(workspace, kitchen),
                List.copyOf(kitchen.dishes().keySet()));
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
        Frame frame = visit.frame(Place.DESK, "Desk", troubles);
        return new DeskPage(
                frame,
                choices(wish, WrittenEater.all(workspace, kitchen), kitchen),
                new DeskPage.Fields(
                        wish.days(),
                        wish.budget(),
                        wish.mostDishes(),
                        wish.sessions(),
                        kitchen.currency().toString()),
                state.working(),
                shown(visit, state, frame));
    }

    private static DeskPage.Choices choices(DeskWish wish, List<WrittenEater> eaters, Kitchen kitchen) {
        return new DeskPage.Choices(
                eaters.stream()
                        .map(eater -> new DeskPage.Ticked(
                                eater.id(), eater.name(), wish.eaters().contains(eater.id())))
                        .toList(),
                eaters.stream()
                        .flatMap(eater ->
                                eater
                                        .controls(
                                                wish.changedOf(eater.id()),
                                                wish.eaters().contains(eater.id()))
                                        .stream())
                        .toList(),
                kitchen.dishes().values().stream()
                        .sorted(Comparator.comparing(Dish::name))
                        .map(dish -> new DeskPage.DishChoice(dish.id(), dish.name(), wish.wishFor(dish.id())))
                        .toList());
    }

    private void answer(Visit visit) {
        shown(visit, board(visit).state(), visit.frame(Place.DESK, "Desk"))
                .ifPresentOrElse(shown -> visit.show("deskanswer", shown), visit::done);
    }

    private static Optional<DeskShown> shown(Visit visit, DeskBoard.State state, Frame frame) {
        return state.found()
                .map(found -> new DeskShown(
                        frame,
                        found.stamp(),
                        mark(found, state.number()),
                        answer(found.outcome(), state),
                        planned(state).isPresent() && visit.files().isOwn(),
                        state.explained().isPresent()));
    }

    private static Optional<String> mark(DeskBoard.Found found, int asked) {
        if (found.number() != asked) {
            return Optional.of("This is for what was asked before; the answer to the change is being worked out.");
        }
        if (found.checked()) {
            return Optional.empty();
        }
        boolean plan = found.outcome().answer().flatMap(PlanAnswer::plan).isPresent();
        return Optional.of(
                plan
                        ? "A quick answer that keeps every rule. Checking whether there is a cheaper plan."
                        : "Checking what stands in the way.");
    }

    private static Optional<PlanAnswer> planned(DeskBoard.State state) {
        return state.found()
                .flatMap(found -> found.outcome().answer())
                .filter(a -> a.plan().isPresent());
    }

    private static DeskAnswer answer(DeskBoard.Outcome outcome, DeskBoard.State state) {
        if (!outcome.refused().isEmpty()) {
            return DeskAnswer.refused(outcome.refused());
        }
        return outcome.answer()
                .map(answer -> DeskAnswer.of(outcome.first(), answer, state.before(), STYLE))
                .orElseGet(() -> DeskAnswer.nothingToCook(outcome.first()));
    }

    private PlanAnswer shown(Visit visit) {
        return planned(board(visit).state())
                .orElseThrow(() -> Refused.because("there is no plan on the desk", "Work one out first."));
    }

    private void keep(Visit visit) {
        PlanAnswer answer = shown(visit);
        String seen = visit.field("stamp");
        boolean isSeen = board(visit)
                .state()
                .found()
                .filter(found -> seen.isEmpty() || seen.equals(Integer.toString(found.stamp())))
                .isPresent();
        if (!isSeen) {
            throw Refused.because("the plan changed meanwhile", "Go back, look at it, and keep that one.");
        }
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
