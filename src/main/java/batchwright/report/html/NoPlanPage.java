package batchwright.report.html;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.report.html.part.Document;
import batchwright.report.plan.NoPlanWords;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * There is no plan: why, and what would make one possible. No figure of anybody's body or needs is on it.
 *
 * @param cautions when one of them stops it
 * @param before paragraphs above the clashes
 * @param after paragraphs below them
 */
public record NoPlanPage(
        Document document,
        String forWhom,
        String says,
        Optional<CautionsSection> cautions,
        List<String> before,
        List<NoPlanWords.Section> clashes,
        List<String> after) {
    private static final String MORE_TIME =
            "Try more time with --seconds, fewer days, or profiles that name the few snacks an eater likes (snacks: only).";
    private static final String LOOSEN = "Try a larger --budget or more --dishes, or loosen a wish in the profile.";

    static NoPlanPage of(PlanAnswer answer, ReportStyle style) {
        var words = new NoPlanWords(answer);
        boolean stopped = answer.stoppedByCaution();
        boolean clashes = isProven(answer) && !answer.clashes().isEmpty();
        return new NoPlanPage(
                style.document(PlanPage.forWhom(answer), List.of()),
                PlanPage.forWhom(answer),
                stopped ? "A caution stops it." : says(answer),
                stopped
                        ? Optional.of(CautionsSection.of(
                                Notice.of(answer), answer.needs().size()))
                        : Optional.empty(),
                stopped ? List.of() : before(answer, words, clashes),
                !stopped && clashes ? words.sections() : List.of(),
                stopped ? List.of() : after(words, clashes));
    }

    private static boolean isProven(PlanAnswer answer) {
        return answer.status() == PlanAnswer.Status.NO_PLAN;
    }

    private static String says(PlanAnswer answer) {
        return isProven(answer)
                ? "No plan keeps every rule"
                        + answer.budget()
                                .map(b -> " within "
                                        + Show.money(b, answer.kitchen().currency()))
                                .orElse("")
                        + "."
                : "No plan was found in the time given, and no proof that there is none.";
    }

    private static List<String> before(PlanAnswer answer, NoPlanWords words, boolean clashes) {
        if (!isProven(answer)) {
            return Stream.concat(words.overBudget().stream(), Stream.of(MORE_TIME))
                    .toList();
        }
        return clashes ? List.of() : List.of(LOOSEN);
    }

    private static List<String> after(NoPlanWords words, boolean clashes) {
        return Stream.concat(clashes ? words.below().stream() : Stream.<String>empty(), words.stuck().stream())
                .toList();
    }
}
