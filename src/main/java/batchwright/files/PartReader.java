package batchwright.files;

import batchwright.food.Ingredient;
import batchwright.food.Part;
import batchwright.text.Written;
import java.util.List;
import java.util.Optional;

/** One part of a dish. */
final class PartReader {
    private static final List<String> KEYS = List.of("part", "optional", "piece", "least", "most", "mix");

    private final MixReader mixes;
    private final AmountGrammar amounts;
    private final Problems problems;
    private final Once once;

    PartReader(MixReader mixes, AmountGrammar amounts, Problems problems) {
        this.mixes = mixes;
        this.amounts = amounts;
        this.problems = problems;
        this.once = new Once(problems);
    }

    /** Empty when there is a problem in it. */
    Optional<Part> read(Yaml.Group group) {
        int before = problems.errors();
        var fields = Fields.of(group, KEYS, problems);
        Optional<Written> name = fields.need("part", "Enter the name of this part: part: sauce");
        name.ifPresent(n -> once.isNew(n.text(), n));
        boolean optional = fields.yesNo("optional").orElse(false);
        List<Ingredient> mix = mix(fields);
        Optional<PortionGrammar> portions = fields.has("piece")
                ? fields.text("piece").flatMap(piece -> inPieces(piece, mix))
                : Optional.of(PortionGrammar.onTheScale(problems));
        Optional<Written> least = fields.need("least", "Enter the least of it in a container: least: 60 g");
        Optional<Written> most = fields.need("most", "Enter the most of it in a container: most: 120 g");
        Optional<Integer> leastGrams = portions.flatMap(p -> least.flatMap(p::read));
        Optional<Integer> mostGrams = portions.flatMap(p -> most.flatMap(p::read));
        if (leastGrams.isPresent() && mostGrams.isPresent() && leastGrams.get() > mostGrams.get()) {
            problems.error(
                    least.orElseThrow(),
                    "least %s is more than most %s"
                            .formatted(least.get().text(), most.orElseThrow().text()),
                    "expected the smaller of the two as least");
        }
        if (problems.errors() > before || mix.isEmpty()) {
            return Optional.empty();
        }
        var portion = portions.orElseThrow();
        return Optional.of(new Part(
                name.orElseThrow().text(),
                optional,
                portion.stepGrams(),
                portion.pieces(),
                leastGrams.orElseThrow(),
                mostGrams.orElseThrow(),
                mix));
    }

    /** A piece of a single food may be one of its measures: piece: 1 large. */
    private Optional<PortionGrammar> inPieces(Written piece, List<Ingredient> mix) {
        return mix.size() == 1
                ? PortionGrammar.inPieces(piece, mix.get(0).food(), amounts, problems)
                : PortionGrammar.inPieces(piece, problems);
    }

    private List<Ingredient> mix(Fields fields) {
        return fields.needGroup("mix", "Enter the foods of this part below mix: one a line")
                .map(mixes::read)
                .orElse(List.of());
    }
}
