package batchwright.files.profile;

import batchwright.files.page.Fields;
import batchwright.files.value.Problems;
import batchwright.person.PhysicalActivity;
import batchwright.text.Written;
import java.util.Optional;
import java.util.stream.Stream;

/** How active the eater is: the line activity, and the diary or the facts below it where that line says so. */
final class ActivityReader {
    private static final String DIARY = "diary";
    private static final String FACTS = "facts";

    private final Problems problems;
    private final double ageYears;

    /** @param ageYears of the eater */
    ActivityReader(Problems problems, double ageYears) {
        this.problems = problems;
        this.ageYears = ageYears;
    }

    /** Empty when there is a problem with it. */
    Optional<? extends PhysicalActivity> read(Fields fields) {
        Optional<Written> said = fields.need(
                "activity", "Enter how active you are: facts, sedentary, active, vigorous, or a number such as 1.65");
        said.ifPresent(written -> notUsed(fields, written));
        if (said.isPresent() && said.get().text().equals(FACTS)) {
            return new FactsReader(problems, ageYears).read(fields);
        }
        if (said.isPresent() && said.get().text().equals(DIARY)) {
            return fields.needGroup(DIARY, "Enter the hours of a day or a week below it, a line each: sleeping: 8 h")
                    .flatMap(new DiaryReader(problems)::read);
        }
        return said.flatMap(written -> ActivityGrammar.read(written, problems));
    }

    private void notUsed(Fields fields, Written said) {
        Stream.concat(Stream.of(DIARY), FactsReader.KEYS.stream())
                .filter(fields::has)
                .filter(key -> !said.text().equals(key.equals(DIARY) ? DIARY : FACTS))
                .forEach(key -> problems.error(
                        fields.place(key),
                        "the line " + key + " is not used, because activity is " + said.quoted(),
                        "expected activity: " + (key.equals(DIARY) ? DIARY : FACTS) + ", or no " + key));
    }
}
