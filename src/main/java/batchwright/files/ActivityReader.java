package batchwright.files;

import batchwright.person.Activity;
import batchwright.text.Written;
import java.util.Optional;

/** How active the eater is: the line activity, and the diary below it where that line says diary. */
final class ActivityReader {
    private static final String DIARY = "diary";

    private final Problems problems;

    ActivityReader(Problems problems) {
        this.problems = problems;
    }

    /** Empty when there is a problem with it. */
    Optional<? extends Activity> read(Fields fields) {
        Optional<Written> said = fields.need(
                "activity", "Enter how active you are: sedentary, active, vigorous, or a number such as 1.65");
        if (said.isPresent() && said.get().text().equals(DIARY)) {
            return fields.needGroup(DIARY, "Enter the hours of a day or a week below it, a line each: sleeping: 8 h")
                    .flatMap(new DiaryReader(problems)::read);
        }
        if (said.isPresent() && fields.has(DIARY)) {
            problems.error(
                    fields.place(DIARY),
                    "the diary is not used, because activity is " + said.get().quoted(),
                    "expected activity: diary, or no diary");
        }
        return said.flatMap(written -> ActivityGrammar.read(written, problems));
    }
}
