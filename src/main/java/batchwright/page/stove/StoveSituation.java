package batchwright.page.stove;

import batchwright.answer.PotAnswer;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.LabelsOfSession;
import batchwright.app.book.SharePot;
import batchwright.app.book.SharePot.SharedPot;
import batchwright.app.book.WriteInBook;
import batchwright.book.Book;
import batchwright.book.Event;
import batchwright.book.KeptSession;
import batchwright.food.Kitchen;
import batchwright.page.KnownEaters;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.StovePage;
import batchwright.report.html.web.StovePage.Done;
import batchwright.report.html.web.StovePage.Doubt;
import batchwright.report.html.web.StovePage.Pot;
import batchwright.report.html.web.StovePage.Shares;
import batchwright.report.html.web.Trouble;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.pdf.LabelPdf;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** At the stove: the order of work of the next cooking session; what was done goes into the book. */
public final class StoveSituation implements Situation {
    private static final String HERE = "/stove";
    private static final LabelStyle LABELS = new LabelStyle(LabelSheet.A4_2X7, LabelRounding.US);

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, Pot.NONE, List.of()))
                .get(HERE + "/labels.pdf", StoveSituation::labels)
                .post(HERE + "/cooked", visit -> write(visit, "cooked"))
                .post(HERE + "/filled", visit -> write(visit, "filled"))
                .post(HERE + "/pot", visit -> weighed(visit, StoveSituation::shared))
                .post(HERE + "/pot/labels.pdf", visit -> weighed(visit, StoveSituation::labelsOfPot))
                .post(HERE + "/pot/filled", visit -> weighed(visit, StoveSituation::filled));
    }

    private static void show(Visit visit, Pot pot, List<Trouble> troubles) {
        show(visit, pot, Doubt.NONE, troubles);
    }

    private static void show(Visit visit, Pot pot, Doubt doubt, List<Trouble> troubles) {
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        var eaters = new KnownEaters(workspace);
        var frame = visit.frame(Place.STOVE, "Stove", troubles);
        StovePage page = next(visit, workspace)
                .map(session -> StovePage.of(
                                frame,
                                session,
                                kitchen,
                                done(session, workspace.book()),
                                id -> eaters.name(id, kitchen))
                        .with(pot, doubt))
                .orElseGet(() -> StovePage.nothing(frame));
        if (troubles.isEmpty()) {
            visit.show("stove", page);
        } else {
            visit.showWrong("stove", page);
        }
    }

    private static Optional<KeptSession> next(Visit visit, Workspace workspace) {
        return workspace.keptPlans().next(visit.files().today());
    }

    private static KeptSession session(Visit visit, Workspace workspace) {
        return next(visit, workspace)
                .orElseThrow(() -> Refused.because("nothing is to be cooked", "Make a plan at the desk and keep it."));
    }

    private static Done done(KeptSession session, Book book) {
        return new Done(
                of(
                        session,
                        book.all(Event.Cooked.class)
                                .map(cooked -> new On(cooked, cooked.event().dish()))),
                of(
                        session,
                        book.all(Event.Filled.class)
                                .map(filled ->
                                        new On(filled, filled.event().boxes().dish()))));
    }

    private record On(Book.Of<?> line, String dish) {}

    /** Since the session, and for the plan. */
    private static Set<String> of(KeptSession session, Stream<On> lines) {
        return lines.filter(on -> !on.line().day().isBefore(session.date()))
                .filter(on -> session.plan().covers(on.line().day()))
                .map(On::dish)
                .collect(Collectors.toSet());
    }

    /** Only what is cooked in the session. */
    private static String dish(Visit visit) {
        String asked = visit.field("dish");
        return session(visit, visit.workspace()).batches().stream()
                .map(batch -> batch.dish())
                .filter(asked::equals)
                .findFirst()
                .orElseThrow(() -> Refused.because("that is not cooked here", "Reload the page."));
    }

    private static void write(Visit visit, String what) {
        String dish = dish(visit);
        try {
            book(visit).add(what + " " + dish + " as planned", visit.files().today());
        } catch (Refused refused) {
            show(visit, Pot.NONE, new Doubt(what, dish), List.of(new Trouble("dish-" + dish, sentences(refused))));
            return;
        }
        visit.go(HERE + "#fill", "Written down. It can be undone before the fridge.");
    }

    private static WriteInBook book(Visit visit) {
        Workspace workspace = visit.workspace();
        return new WriteInBook(
                workspace, workspace.kitchen(), visit.field("sure").equals("yes"));
    }

    /** What was typed stays in its fields when it cannot be right. */
    private static void weighed(Visit visit, BiConsumer<Visit, Weighed> then) {
        String dish = dish(visit);
        var typed = new Pot(dish, visit.field("part"), visit.field("full"), visit.field("empty"), Optional.empty());
        Optional<PotWeight> full = PotWeight.of(typed.full());
        Optional<PotWeight> empty = PotWeight.of(typed.empty().isEmpty() ? "0" : typed.empty());
        if (full.isEmpty() || empty.isEmpty()) {
            show(
                    visit,
                    typed,
                    List.of(new Trouble(
                            (full.isEmpty() ? "full-" : "empty-") + dish, "Enter a weight such as 5300 or 5.3 kg.")));
            return;
        }
        if (full.get().grams().compareTo(empty.get().grams()) <= 0) {
            show(visit, typed, List.of(new Trouble("full-" + dish, "The full pot weighs no more than the empty one.")));
            return;
        }
        Workspace workspace = visit.workspace();
        try {
            SharedPot shared = new SharePot(
                            workspace, workspace.kitchen(), visit.files().today())
                    .share(
                            dish,
                            typed.part().isEmpty() ? Optional.empty() : Optional.of(typed.part()),
                            full.get().grams().subtract(empty.get().grams()));
            then.accept(visit, new Weighed(typed, shared));
        } catch (Refused refused) {
            show(visit, typed, List.of(new Trouble("full-" + dish, sentences(refused))));
        }
    }

    private record Weighed(Pot typed, SharedPot pot) {
        PotAnswer answer() {
            return pot.answer();
        }
    }

    private static void labelsOfPot(Visit visit, Weighed weighed) {
        download(visit, LabelPdf.of(weighed.pot().labels(), LABELS));
    }

    private static void download(Visit visit, LabelPdf pdf) {
        visit.download("labels.pdf", "application/pdf", pdf.content());
    }

    private static void shared(Visit visit, Weighed weighed) {
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        var eaters = new KnownEaters(workspace);
        Pot typed = weighed.typed();
        show(
                visit,
                new Pot(
                        typed.dish(),
                        typed.part(),
                        typed.full(),
                        typed.empty(),
                        Optional.of(Shares.of(weighed.answer(), id -> eaters.name(id, kitchen)))),
                List.of());
    }

    private static void filled(Visit visit, Weighed weighed) {
        book(visit)
                .add(
                        "filled " + weighed.typed().dish() + " as planned",
                        visit.files().today(),
                        weighed.answer());
        visit.go(HERE + "#fill", "Written down, with what each box now holds.");
    }

    private static String sentences(Refused refused) {
        return refused.faults().stream()
                .map(fault -> Character.toUpperCase(fault.wrong().charAt(0))
                        + fault.wrong().substring(1) + ". " + fault.cure())
                .collect(Collectors.joining(" "));
    }

    private static void labels(Visit visit) {
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        var eaters = new KnownEaters(workspace);
        var labels = LabelsOfSession.of(session(visit, workspace), kitchen, id -> eaters.name(id, kitchen));
        download(visit, LabelPdf.of(labels, LABELS));
    }
}
