package batchwright.page.start;

import batchwright.app.ProfileQuestion;
import batchwright.page.Visit;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.QuestionPage;
import batchwright.report.html.web.QuestionPage.Answer;
import batchwright.report.html.web.QuestionPage.Sent;
import batchwright.report.html.web.Trouble;
import java.util.List;

/**
 * A question, to be shown alone on a page.
 *
 * @param words what it says, after the answers so far
 * @param wrong what was wrong with the answer that is shown; none when it was not sent yet
 */
record AskedQuestion(ProfileQuestion question, QuestionWords words, Answer answer, List<String> wrong) {
    AskedQuestion {
        wrong = List.copyOf(wrong);
    }

    /**
     * @param mayGoBack to the question before
     * @param sent where the answer goes
     */
    void show(Visit visit, boolean mayGoBack, Sent sent) {
        var asked = words.asked(question);
        String field =
                asked.choices().isEmpty() ? "words" : asked.choices().get(0).id();
        List<Trouble> troubles =
                wrong.stream().map(says -> new Trouble(field, says)).toList();
        var page = new QuestionPage(
                visit.frame(Place.START, words.heading(question), troubles),
                asked,
                answer,
                !question.needed(),
                mayGoBack,
                sent);
        visit.show("question", page, wrong.isEmpty());
    }
}
