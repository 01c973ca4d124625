package batchwright.page.fridge;

import batchwright.answer.BookAnswer;
import batchwright.answer.Fault;
import batchwright.app.NeedsOfEater;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.book.FindAtHome;
import batchwright.app.book.TodayInKitchen;
import batchwright.app.book.WriteInBook;
import batchwright.food.Kitchen;
import batchwright.page.KnownEaters;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.FridgePage;
import batchwright.report.html.web.FridgePage.Typed;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import batchwright.report.html.web.WeightPage;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Today before the fridge: everything that is tapped goes into the book, as a line of it. */
public final class FridgeSituation implements Situation {
    private static final String HERE = "/fridge";

    @Override
    public void open(Routes routes) {
        routes.get(HERE, visit -> show(visit, Typed.NOTHING, List.of()))
                .get(HERE + "/weight/{eater}", FridgeSituation::weight)
                .post(HERE + "/planned", visit -> write(visit, "planned", "ate " + eater(visit) + " as planned"))
                .post(HERE + "/all", visit -> write(visit, "all", "ate " + eater(visit) + " nothing else"))
                .post(HERE + "/eaten", visit -> write(visit, "eaten", "ate " + eater(visit) + " 1 " + dish(visit)))
                .post(
                        HERE + "/thrown",
                        visit -> write(visit, "thrown", "threw away 1 " + dish(visit) + " of " + eater(visit)))
                .post(HERE + "/done", visit -> write(visit, "done", done(visit)))
                .post(HERE + "/else", visit -> typed(visit, "else", "ate " + eater(visit) + " "))
                .post(HERE + "/weighed", visit -> typed(visit, "weighed", "weighed " + eater(visit) + " "))
                .post(HERE + "/undo", FridgeSituation::undo)
                .post(HERE + "/adopt", FridgeSituation::adopt);
    }

    private static void show(Visit visit, Typed typed, List<Trouble> troubles) {
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        var eaters = new KnownEaters(workspace);
        var page = FridgePage.of(
                visit.frame(Place.FRIDGE, "Fridge", troubles),
                TodayInKitchen.answer(workspace),
                FindAtHome.answer(workspace),
                kitchen,
                id -> eaters.name(id, kitchen),
                typed);
        if (troubles.isEmpty()) {
            visit.show("fridge", page);
        } else {
            visit.showWrong("fridge", page);
        }
    }

    private static String eater(Visit visit) {
        return new KnownEaters(visit.workspace()).id(visit.field("eater"));
    }

    private static String dish(Visit visit) {
        String asked = visit.field("dish");
        return TodayInKitchen.answer(visit.workspace()).boxes().stream()
                .map(lot -> lot.boxes().dish())
                .filter(asked::equals)
                .findFirst()
                .orElseThrow(
                        () -> Refused.because("there is no such box", "Reload the page: it may be eaten already."));
    }

    /** Only what the page itself offers. */
    private static String done(Visit visit) {
        String words = visit.field("words");
        if (!words.matches(
                "(cooked|filled) [a-z0-9_]+ as planned|(thawed|threw away) [0-9]{1,3} [a-z0-9_]+ of [A-Za-z0-9_-]+")) {
            throw Refused.because("there is no such thing to do", "Reload the page.");
        }
        return words;
    }

    /** What was tapped may be doubted, such as a box that nobody filled: then it can be said again, for sure. */
    private static void write(Visit visit, String tapped, String words) {
        try {
            BookAnswer answer = book(visit, visit.field("sure").equals("yes"))
                    .add(words, visit.files().today());
            visit.go(HERE, said(answer));
        } catch (Refused refused) {
            String says = says(refused);
            String what = visit.field("dish").isEmpty() ? visit.field("words") : visit.field("dish");
            show(visit, new Typed(visit.field("eater"), tapped, what, isDoubt(says)), List.of(new Trouble("", says)));
        }
    }

    private static boolean isDoubt(String says) {
        return says.contains("you are sure");
    }

    private static String says(Refused refused) {
        return refused.faults().stream().map(FridgeSituation::sentence).collect(Collectors.joining(" "));
    }

    /** What somebody typed may be wrong, or doubted: then it stays in its field. */
    private static void typed(Visit visit, String field, String before) {
        String words = visit.field("words");
        String eater = eater(visit);
        boolean sure = visit.field("sure").equals("yes");
        if (words.isEmpty()) {
            show(visit, Typed.NOTHING, List.of(new Trouble(field + "-" + eater, "Enter something first.")));
            return;
        }
        try {
            BookAnswer answer = book(visit, sure)
                    .add(
                            before + (field.equals("weighed") ? visit.units().bodyWeight(words) : words),
                            visit.files().today());
            visit.go(HERE, said(answer));
        } catch (Refused refused) {
            String says = says(refused);
            show(visit, new Typed(eater, field, words, isDoubt(says)), List.of(new Trouble(field + "-" + eater, says)));
        }
    }

    private static String sentence(Fault fault) {
        String wrong = fault.wrong();
        return Character.toUpperCase(wrong.charAt(0)) + wrong.substring(1) + ". " + fault.cure();
    }

    private static void undo(Visit visit) {
        String line = visit.field("line");
        if (!line.matches("[0-9]{1,7}")) {
            throw Refused.because("there is no such line", "Reload the page.");
        }
        book(visit, false).undo(OptionalInt.of(Integer.parseInt(line)));
        visit.go(HERE, "Undone: it is as if it had not been written down.");
    }

    private static void adopt(Visit visit) {
        String eater = eater(visit);
        NeedsOfEater.adopt(visit.workspace(), eater);
        visit.go(HERE + "/weight/" + eater, "Adopted: the next plan goes by it. It can be undone like any other line.");
    }

    private static void weight(Visit visit) {
        Workspace workspace = visit.workspace();
        String eater = new KnownEaters(workspace).id(visit.part("eater"));
        String name = new KnownEaters(workspace).name(eater, workspace.kitchen());
        visit.show(
                "weight",
                WeightPage.of(
                        visit.frame(Place.FRIDGE, "Weight: " + name), eater, NeedsOfEater.learned(workspace, eater)));
    }

    private static WriteInBook book(Visit visit, boolean sure) {
        Workspace workspace = visit.workspace();
        return new WriteInBook(workspace, workspace.kitchen(), sure);
    }

    private static String said(BookAnswer answer) {
        return "Written down: " + String.join("; ", answer.lines()) + ".";
    }
}
