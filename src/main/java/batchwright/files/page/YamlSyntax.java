package batchwright.files.page;

import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Says in a cook's words what the YAML parser says in its own. */
final class YamlSyntax {
    private static final String GROUP = "expected lines of one group to begin in the same column, with spaces in front";

    /**
     * @param says what the parser says, or where it was
     * @param fromStart whether the place is where the construct began rather than where the parser gave up
     */
    private record Words(String says, boolean fromStart, String wrong, String expected) {}

    private static final List<Words> ALL = List.of(
            new Words("\\t(TAB)", false, "there is a tab before the text", "expected spaces: YAML does not allow tabs"),
            new Words(
                    "mapping values are not allowed",
                    false,
                    "this colon cannot be understood",
                    "expected text that holds a colon in double quotes, and keys of one group in the same column"),
            new Words(
                    "quoted scalar",
                    true,
                    "this quote does not end as it should",
                    "expected one pair of double quotes around the text, and no backslash in it"),
            new Words(
                    "flow sequence",
                    true,
                    "this list is not closed",
                    "expected commas between the items and ] at the end"),
            new Words(
                    "flow mapping",
                    true,
                    "this group is not closed",
                    "expected commas between the keys and } at the end"),
            new Words(
                    "could not find expected ':'", true, "this line has no colon after its key", "expected key: value"),
            new Words(
                    "sequence entries are not allowed",
                    false,
                    "a list item cannot be here",
                    "expected every item on a line of its own, with a hyphen in front"),
            new Words(
                    "cannot start any token",
                    false,
                    "a value cannot begin with this character",
                    "expected the text in double quotes"),
            new Words("expected <block end>", false, "this does not belong to the lines above", GROUP));

    private static final Pattern OPEN_QUOTE = Pattern.compile("[ -]*[a-z_]+: *(\")[^\"]*");

    private YamlSyntax() {}

    static Problem explain(SourceFile file, MarkedYamlEngineException syntax) {
        Optional<Problem> quote = syntax.getProblemMark().flatMap(m -> openQuote(file, m.getLine() + 1));
        if (quote.isPresent()) {
            return quote.get();
        }
        String says = syntax.getContext() + " " + syntax.getProblem();
        Optional<Words> words = ALL.stream().filter(w -> says.contains(w.says)).findFirst();
        Optional<Mark> mark = words.filter(Words::fromStart)
                .flatMap(w -> syntax.getContextMark())
                .or(syntax::getProblemMark);
        Span at =
                mark.map(m -> file.span(m.getLine() + 1, m.getColumn() + 1, 1)).orElse(Span.whole(file));
        return Problem.error(
                at,
                words.map(Words::wrong).orElse("this cannot be read as YAML"),
                words.map(Words::expected).orElse("expected key: value, and unusual text in double quotes"));
    }

    /** Text may go on for lines in quotes; but where a page cannot be read, a quote left open above is the likeliest reason. */
    private static Optional<Problem> openQuote(SourceFile file, int until) {
        for (int line = 1; line <= until; line++) {
            Matcher open = OPEN_QUOTE.matcher(file.line(line));
            if (open.matches()) {
                return Optional.of(Problem.error(
                        file.span(line, open.start(1) + 1, 1),
                        "this quote is not closed on its line",
                        "expected one pair of double quotes around the text"));
            }
        }
        return Optional.empty();
    }
}
