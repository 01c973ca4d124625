package batchwright.files.dishes;

import batchwright.files.page.Fields;
import batchwright.files.value.Problems;
import batchwright.food.Part;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;

/** The parts that a step is for: names of parts of the same dish. Where it is not said, the step is always done. */
final class PartOfStepGrammar {
    private final List<Part> parts;
    private final boolean all;
    private final Problems problems;

    /**
     * @param parts those that could be read
     * @param all whether these are all of the dish; if not, a name may be that of another
     */
    PartOfStepGrammar(List<Part> parts, boolean all, Problems problems) {
        this.parts = parts;
        this.all = all;
        this.problems = problems;
    }

    List<String> read(Fields fields) {
        List<Written> named = fields.oneOrMore("part", "expected names of parts of this dish");
        named.forEach(this::check);
        return named.stream().map(Written::text).distinct().toList();
    }

    private void check(Written name) {
        Optional<Part> part =
                parts.stream().filter(p -> p.name().equals(name.text())).findFirst();
        if (part.isEmpty() && all) {
            List<String> names = parts.stream().map(Part::name).toList();
            problems.unknown(
                    name,
                    "this dish has no part called " + name.quoted(),
                    "expected " + String.join(", ", names) + "; or the line left out: the step is always done",
                    names);
        }
        part.filter(p -> !p.optional())
                .ifPresent(p -> problems.warning(
                        name.at(),
                        name.quoted() + " is in every container, so this step never falls away",
                        "expected a part that says optional: yes, or the line left out"));
    }
}
