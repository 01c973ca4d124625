package batchwright.page.start;

import batchwright.app.ProfileAnswers;
import batchwright.app.ProfileQuestion;
import batchwright.report.html.web.CheckPage;
import java.util.List;

/** All answers, a line each, by which they are looked at and changed. */
final class AnswerLines {
    private AnswerLines() {}

    static List<CheckPage.Line> of(ProfileAnswers answers) {
        return answers.questions().stream()
                .filter(q -> !q.key().equals("day") || !answers.has(ProfileQuestion.ACTIVITY))
                .map(q -> new CheckPage.Line(
                        q.key(),
                        Character.toUpperCase(q.label().charAt(0)) + q.label().substring(1),
                        q.key().equals(ProfileQuestion.ACTIVITY) && answers.has("day")
                                ? answers.all().getOrDefault("day", "")
                                : answers.said(q)))
                .toList();
    }
}
