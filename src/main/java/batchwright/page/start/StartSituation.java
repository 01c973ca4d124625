package batchwright.page.start;

import batchwright.app.ProfileQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.food.Kitchen;
import batchwright.page.KnownEaters;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.page.desk.DeskSituation;
import batchwright.report.html.web.CheckPage;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.QuestionPage;
import batchwright.report.html.web.QuestionPage.Answer;
import batchwright.report.html.web.StartPage;
import batchwright.report.html.web.Trouble;
import java.util.List;
import java.util.Optional;

/** From nothing to a profile and a first plan, one question a page. */
public final class StartSituation implements Situation {
    private static final String HERE = "/start";
    private static final String QUESTIONS = HERE + "/questions";
    private static final String CHECK = HERE + "/check";

    private final DeskSituation desk;

    public StartSituation(DeskSituation desk) {
        this.desk = desk;
    }

    @Override
    public void open(Routes routes) {
        routes.get(HERE, StartSituation::show)
                .get(QUESTIONS, StartSituation::next)
                .get(QUESTIONS + "/{key}", StartSituation::change)
                .get(CHECK, visit -> check(visit, "", List.of()))
                .post(HERE + "/kitchen", StartSituation::kitchen)
                .post(HERE + "/begin", visit -> visit.go(QUESTIONS))
                .post(HERE + "/leave", StartSituation::leave)
                .post(HERE + "/back", StartSituation::back)
                .post(HERE + "/plan", this::plan)
                .post(HERE + "/save", this::save)
                .post(QUESTIONS, StartSituation::answer);
    }

    private static void show(Visit visit) {
        boolean own = visit.files().isOwn();
        Workspace workspace = visit.workspace();
        Kitchen kitchen = workspace.kitchen();
        var eaters = new KnownEaters(workspace);
        visit.show(
                "start",
                new StartPage(
                        visit.frame(Place.START, "Eaters"),
                        eaters.ids().stream()
                                .map(id -> new StartPage.Known(id, eaters.name(id, kitchen)))
                                .toList(),
                        own ? Optional.empty() : Optional.of(visit.files().begins()),
                        own && new Questions(workspace).isBegun()));
    }

    private static void kitchen(Visit visit) {
        visit.files().begin();
        visit.go(QUESTIONS, "Written. The files are yours now.");
    }

    private static Questions questions(Visit visit) {
        if (!visit.files().isOwn()) {
            throw Refused.because(
                    "there is no folder of your own yet", "Go to Eaters, and begin with the starter files.");
        }
        return new Questions(visit.workspace());
    }

    private static void next(Visit visit) {
        Questions questions = questions(visit);
        questions
                .next()
                .ifPresentOrElse(
                        question -> ask(
                                visit,
                                questions,
                                question,
                                new QuestionWords(questions.answers()).answered(question),
                                List.of()),
                        () -> visit.go(CHECK));
    }

    private static void change(Visit visit) {
        Questions questions = questions(visit);
        ProfileQuestion question = question(questions, visit.part("key"));
        if (question.key().equals(ProfileQuestion.HEALTH)) {
            Answer before = new QuestionWords(questions.answers()).answered(question);
            questions.answers().remove(ProfileQuestion.HEALTH);
            ask(visit, questions, question, before, List.of());
        } else {
            ask(visit, questions, question, new QuestionWords(questions.answers()).answered(question), List.of());
        }
    }

    private static ProfileQuestion question(Questions questions, String key) {
        return questions
                .of(key)
                .orElseThrow(() -> Refused.because("there is no such question", "Go on with the questions."));
    }

    private static void ask(
            Visit visit, Questions questions, ProfileQuestion question, Answer answer, List<String> wrong) {
        new AskedQuestion(question, new QuestionWords(questions.answers()), answer, wrong)
                .show(visit, questions.before(question).isPresent(), QuestionPage.Sent.ON);
    }

    private static void answer(Visit visit) {
        Questions questions = questions(visit);
        ProfileQuestion question = question(questions, visit.field("key"));
        if (visit.field("leave").equals("yes") && !question.needed()) {
            questions.leave(question);
            visit.go(QUESTIONS);
            return;
        }
        List<String> chosen = visit.fields("chosen");
        String words = visit.field("words");
        List<String> wrong = questions.take(question, chosen, words);
        if (wrong.isEmpty()) {
            visit.go(QUESTIONS);
        } else {
            ask(visit, questions, question, new Answer(chosen, words), wrong);
        }
    }

    private static void back(Visit visit) {
        Questions questions = questions(visit);
        String to = questions
                .before(question(questions, visit.field("key")))
                .map(before -> QUESTIONS + "/" + before.key())
                .orElse(QUESTIONS);
        visit.go(to);
    }

    private static void leave(Visit visit) {
        questions(visit).throwAway();
        visit.go(HERE, "The answers are gone.");
    }

    private static void check(Visit visit, String name, List<Trouble> troubles) {
        Questions questions = questions(visit);
        if (questions.next().isPresent()) {
            visit.go(QUESTIONS);
            return;
        }
        var page = new CheckPage(
                visit.frame(Place.START, "Check your answers", troubles),
                questions.lines(),
                questions.cautions(),
                name);
        if (troubles.isEmpty()) {
            visit.show("check", page);
        } else {
            visit.showWrong("check", page);
        }
    }

    private void save(Visit visit) {
        String name = visit.field("name");
        if (name.isEmpty()) {
            check(visit, name, List.of(new Trouble("name", "Enter a name.")));
            return;
        }
        String id;
        try {
            id = questions(visit).save(name);
        } catch (Refused refused) {
            check(
                    visit,
                    name,
                    refused.faults().stream()
                            .map(fault -> new Trouble("name", fault.wrong() + "; " + fault.cure()))
                            .toList());
            return;
        }
        desk.begin(visit, id);
        visit.go("/desk", "Saved as profiles/" + id + ".yaml. The first plan is being worked out.");
    }

    private void plan(Visit visit) {
        desk.begin(visit, new KnownEaters(visit.workspace()).id(visit.field("eater")));
        visit.go("/desk");
    }
}
