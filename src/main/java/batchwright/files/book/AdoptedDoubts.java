package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.Event.Adopted;
import batchwright.person.StepLimits;
import batchwright.text.Problem;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Steps of a target that no program offers: too large, or too soon after the one before. The first of an eater is not judged. */
final class AdoptedDoubts {
    /** Figures are whole. */
    private static final double ROUNDED_KCAL = 1;

    private final Map<String, Book.Of<Adopted>> last = new HashMap<>();
    private final List<Problem> doubts = new ArrayList<>();

    private AdoptedDoubts() {}

    static List<Problem> of(Book book) {
        var doubts = new AdoptedDoubts();
        book.all(Adopted.class).forEach(doubts::look);
        return doubts.doubts;
    }

    private void look(Book.Of<Adopted> now) {
        Book.Of<Adopted> before = last.put(now.event().eater(), now);
        if (before == null) {
            return;
        }
        double step = now.event().kcal().subtract(before.event().kcal()).abs().doubleValue();
        if (step > StepLimits.MOST_KCAL + ROUNDED_KCAL) {
            doubt(
                    now,
                    "%s kcal is a step of %s kcal from %s kcal of %s"
                            .formatted(
                                    now.event().kcal().toPlainString(),
                                    Math.round(step),
                                    before.event().kcal().toPlainString(),
                                    before.day()),
                    "a step is at most %s kcal".formatted(Math.round(StepLimits.MOST_KCAL)));
        }
        long days = ChronoUnit.DAYS.between(before.day(), now.day());
        if (days < StepLimits.DAYS_BETWEEN) {
            doubt(
                    now,
                    "a step %s days after that of %s".formatted(days, before.day()),
                    "there are at least %s days between steps".formatted(StepLimits.DAYS_BETWEEN));
        }
    }

    private void doubt(Book.Of<Adopted> now, String wrong, String expected) {
        doubts.add(Problem.warning(
                now.entry().at(), wrong, expected + ", so that weight can answer: undo it, or ask again"));
    }
}
