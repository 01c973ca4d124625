package batchwright.page.start;

import batchwright.answer.Fault;
import batchwright.app.ProfileQuestion;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.app.profile.AnswersChanged;
import batchwright.app.profile.ChangePage;
import batchwright.page.KnownEaters;
import batchwright.page.Routes;
import batchwright.page.Situation;
import batchwright.page.Visit;
import batchwright.report.html.web.EaterPage;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.QuestionPage.Answer;
import batchwright.report.html.web.QuestionPage.Sent;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The answers of an eater who has a profile, each to be changed: its lines of the profile change, and no others. */
public final class ChangeEater implements Situation {
    private static final String HERE = "/start/eater/";

    @Override
    public void open(Routes routes) {
        routes.get(HERE + "{eater}", ChangeEater::show)
                .get(HERE + "{eater}/{key}", ChangeEater::question)
                .post(HERE + "{eater}/{key}", ChangeEater::answer);
    }

    private static String eater(Visit visit) {
        return new KnownEaters(visit.workspace()).id(visit.part("eater"));
    }

    private static void show(Visit visit) {
        Workspace workspace = visit.workspace();
        String eater = eater(visit);
        visit.show(
                "eater",
                new EaterPage(
                        visit.frame(Place.START, new KnownEaters(workspace).name(eater, workspace.kitchen())),
                        eater,
                        AnswerLines.of(new AnswersChanged(workspace, eater).answers())));
    }

    private static void question(Visit visit) {
        String eater = eater(visit);
        var changed = new AnswersChanged(visit.workspace(), eater);
        ProfileQuestion question = question(visit, changed);
        Answer before = new QuestionWords(changed.answers()).answered(question);
        ask(visit, eater, changed, question, before, List.of());
    }

    private static ProfileQuestion question(Visit visit, AnswersChanged changed) {
        String key = visit.part("key");
        return Stream.concat(changed.answers().questions().stream(), ProfileQuestion.of(key).stream())
                .filter(question -> question.key().equals(key))
                .findFirst()
                .orElseThrow(() -> Refused.because("there is no such question", "Go back to the answers."));
    }

    private static void ask(
            Visit visit,
            String eater,
            AnswersChanged changed,
            ProfileQuestion question,
            Answer answer,
            List<String> wrong) {
        if (question.key().equals(ProfileQuestion.HEALTH)) {
            changed.answers().remove(ProfileQuestion.HEALTH); // all groups are asked about again
        }
        new AskedQuestion(question, new QuestionWords(changed.answers()), answer, wrong)
                .show(
                        visit,
                        false,
                        new Sent(HERE + eater + "/" + question.key(), "Write it into the profile", HERE + eater));
    }

    private static void answer(Visit visit) {
        String eater = eater(visit);
        var changed = new AnswersChanged(visit.workspace(), eater);
        ProfileQuestion question = question(visit, changed);
        List<String> chosen = visit.fields("chosen");
        String words = visit.field("words");
        boolean left = visit.field("leave").equals("yes") && !question.needed();
        if (left) {
            changed.answers().remove(question.key());
        }
        List<String> wrong = left ? List.of() : new AnswerTaken(changed.answers()).take(question, chosen, words);
        if (!wrong.isEmpty()) {
            ask(visit, eater, changed, question, new Answer(chosen, words), wrong);
            return;
        }
        try {
            visit.go(HERE + eater, says(changed.write()));
        } catch (Refused no) {
            ask(
                    visit,
                    eater,
                    new AnswersChanged(visit.workspace(), eater),
                    question,
                    new Answer(chosen, words),
                    no.faults().stream().map(ChangeEater::sentence).toList());
        }
    }

    private static String says(ChangePage.Went went) {
        return went.inPlace()
                ? "Written into " + went.path() + "."
                : "The profile has a form that cannot surely be changed: the lines to put in are in " + went.path()
                        + ".";
    }

    private static String sentence(Fault fault) {
        return fault.wrong().substring(0, 1).toUpperCase(Locale.ROOT)
                + fault.wrong().substring(1) + "; " + fault.cure() + ".";
    }
}
