package batchwright.files.page;

import batchwright.files.value.Problems;
import batchwright.text.Echo;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads one YAML page into {@link Yaml}. It takes the plain part of the language: no anchors, aliases, tags or second
 * pages, and neither deep nor long pages, so that no page can keep the program busy.
 */
public final class YamlPage {
    private static final int MOST_CHARACTERS = 200_000;
    private static final int MOST_DEPTH = 10;

    private final SourceFile file;
    private final Problems problems;
    private final Iterator<Event> events;

    private YamlPage(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
        this.events = new Parse(LoadSettings.builder().build())
                .parseString(String.join("\n", file.lines()))
                .iterator();
    }

    /** The page; empty when it is not a page of keys and values, which is then among the problems. */
    public static Optional<Yaml.Group> read(SourceFile file, Problems problems) {
        if (file.lines().stream().mapToInt(String::length).sum() > MOST_CHARACTERS) {
            problems.error(
                    Span.whole(file), "the page is longer than 200,000 letters", "expected a page written by hand");
            return Optional.empty();
        }
        try {
            return new YamlPage(file, problems).page();
        } catch (MarkedYamlEngineException syntax) {
            problems.add(YamlSyntax.explain(file, syntax));
        } catch (YamlEngineException other) {
            problems.error(
                    Span.whole(file), "this cannot be read as YAML", "expected a page without lines that begin with %");
        } catch (TooDeep tooDeep) {
            problems.error(
                    tooDeep.at,
                    "groups and lists are nested too deep",
                    "expected at most %s levels".formatted(MOST_DEPTH));
        }
        return Optional.empty();
    }

    private Optional<Yaml.Group> page() {
        int before = problems.errors();
        Optional<Yaml> page = Optional.empty();
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof DocumentStartEvent && page.isPresent()) {
                problems.error(span(event), "a second page begins here", "expected one page a file");
                return Optional.empty();
            }
            if (event instanceof NodeEvent) {
                page = Optional.of(node(event, 1));
            }
        }
        if (problems.errors() > before) {
            return Optional.empty();
        }
        if (page.isPresent() && page.get() instanceof Yaml.Group group) {
            return Optional.of(group);
        }
        problems.error(
                page.map(Yaml::at).orElse(Span.whole(file)),
                page.isEmpty() ? "the page is empty" : "the page is not made of keys and values",
                "expected lines such as name: value");
        return Optional.empty();
    }

    private Yaml node(Event event, int depth) {
        refuseSpecials(event);
        if (event instanceof ScalarEvent scalar) {
            refuseHidden(scalar);
            return new Yaml.Text(new Written(scalar.getValue(), span(event)));
        }
        if (depth > MOST_DEPTH) {
            throw new TooDeep(span(event));
        }
        if (event instanceof MappingStartEvent) {
            return group(event, depth);
        }
        return event instanceof CollectionStartEvent
                ? items(event, depth)
                : new Yaml.Text(new Written("", span(event)));
    }

    private Yaml items(Event start, int depth) {
        var items = new ArrayList<Yaml>();
        for (Event next = events.next(); next instanceof NodeEvent; next = events.next()) {
            items.add(node(next, depth + 1));
        }
        return new Yaml.Items(List.copyOf(items), span(start));
    }

    private Yaml group(Event start, int depth) {
        var entries = new ArrayList<Yaml.Entry>();
        for (Event next = events.next(); next instanceof NodeEvent; next = events.next()) {
            Yaml key = node(next, depth + 1);
            Yaml value = node(events.next(), depth + 1);
            if (key instanceof Yaml.Text text) {
                entries.add(new Yaml.Entry(text.written(), value));
            } else {
                problems.error(key.at(), "a key must be one word", "expected key: value");
            }
        }
        return new Yaml.Group(List.copyOf(entries), span(start));
    }

    private void refuseSpecials(Event event) {
        if (event instanceof AliasEvent) {
            problems.error(
                    span(event), "* refers to another place of the page", "expected the value itself written out");
        } else if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            problems.error(span(event), "& gives the value a name to refer to", "expected the value without it");
        }
        if (tag(event).isPresent()) {
            problems.error(span(event), "! says of what type the value is", "expected the value without it");
        }
    }

    /** A character that cannot be seen can be written as an escape, too. */
    private void refuseHidden(ScalarEvent scalar) {
        String text = scalar.getValue();
        Echo.firstHidden(text)
                .ifPresent(at -> problems.error(
                        span(scalar),
                        "this stands for a character that cannot be seen (%s)".formatted(Echo.codePoint(text, at)),
                        "expected the text without it"));
    }

    private static Optional<String> tag(Event event) {
        if (event instanceof ScalarEvent scalar) {
            return scalar.getTag();
        }
        return event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
    }

    private Span span(Event event) {
        var start = event.getStartMark().orElseThrow();
        var end = event.getEndMark().orElse(start);
        int line = start.getLine() + 1;
        int length = end.getLine() == start.getLine()
                ? end.getColumn() - start.getColumn()
                : file.line(line).length() - start.getColumn();
        return file.span(line, start.getColumn() + 1, length);
    }

    /** Leaves the page from any depth. */
    private static final class TooDeep extends RuntimeException {
        private final transient Span at;

        TooDeep(Span at) {
            this.at = at;
        }
    }
}
