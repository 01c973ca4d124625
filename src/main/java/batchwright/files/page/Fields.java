package batchwright.files.page;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.files.value.YesNo;
import batchwright.text.NearestName;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The keys of one group, read by name. Unknown keys and keys that are there twice are problems at once. */
public final class Fields {
    private final Yaml.Group group;
    private final Problems problems;
    private final Map<String, Yaml> values = new HashMap<>();
    private final Set<String> misspelt = new HashSet<>();
    private final Span whenMissing;

    /** @param whenMissing the place to show when a key is missing */
    private Fields(Yaml.Group group, Span whenMissing, Problems problems) {
        this.group = group;
        this.problems = problems;
        this.whenMissing = whenMissing;
    }

    public static Fields ofPage(Yaml.Group page, List<String> keys, Problems problems) {
        return new Fields(page, Span.whole(page.at().file()), problems).checked(keys, expected(keys));
    }

    public static Fields of(Yaml.Group group, List<String> keys, Problems problems) {
        return of(group, keys, expected(keys), problems);
    }

    /** @param expected what to say of an unknown key, where its keys are too many to be listed */
    public static Fields of(Yaml.Group group, List<String> keys, String expected, Problems problems) {
        Span first = group.entries().isEmpty()
                ? group.at()
                : group.entries().get(0).key().at();
        return new Fields(group, first, problems).checked(keys, expected);
    }

    private static String expected(List<String> keys) {
        return "expected one of " + String.join(", ", keys);
    }

    private Fields checked(List<String> keys, String expected) {
        var once = new Once(problems);
        for (Yaml.Entry entry : group.entries()) {
            Written key = entry.key();
            if (!keys.contains(key.text())) {
                problems.unknown(key, "there is no key called " + key.quoted(), expected, keys);
                NearestName.of(key.text(), keys).ifPresent(misspelt::add);
            } else if (once.isNew("the key " + key.text(), key)) {
                values.put(key.text(), entry.value());
            }
        }
        return this;
    }

    /** The value as text, if the key is there. */
    public Optional<Written> text(String key) {
        Yaml value = values.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof Yaml.Text text) {
            if (text.written().isEmpty()) {
                problems.error(text.at(), key + " is empty", "expected a value behind the colon, or the line left out");
                return Optional.empty();
            }
            return Optional.of(text.written());
        }
        problems.error(value.at(), key + " is a list or a group", "expected one value behind the colon");
        return Optional.empty();
    }

    /** The value as text, or each item of a list of them; none when the key is missing. */
    public List<Written> oneOrMore(String key, String expected) {
        return values.get(key) instanceof Yaml.Items list
                ? list.items().stream().flatMap(item -> asText(item, expected)).toList()
                : text(key).stream().toList();
    }

    /** The value as text; a missing key is a problem that asks for it. */
    public Optional<Written> need(String key, String ask) {
        if (isMissing(key, ask)) {
            return Optional.empty();
        }
        return text(key);
    }

    /** A missing key, whose value is a text or a list, is a problem that asks for it. */
    public void needed(String key, String ask) {
        isMissing(key, ask);
    }

    public Optional<Boolean> yesNo(String key) {
        return text(key).flatMap(w -> YesNo.read(w, problems));
    }

    public Optional<Integer> whole(String key, NumberRange range) {
        return text(key).flatMap(w -> new Numbers(problems).whole(w, range));
    }

    /** A group of its own; empty when the key is missing. */
    public Optional<Yaml.Group> group(String key) {
        Yaml value = values.get(key);
        if (value == null) {
            return Optional.empty();
        }
        return asGroup(value, key + " is not a group", "expected lines of key: value below it");
    }

    public Optional<Yaml.Group> needGroup(String key, String ask) {
        return isMissing(key, ask) ? Optional.empty() : group(key);
    }

    /** A group, or a list of groups each behind a hyphen. */
    public List<Yaml.Group> oneOrMoreGroups(String key, String ask) {
        return values.get(key) instanceof Yaml.Items
                ? groups(key, ask)
                : group(key).stream().toList();
    }

    /** Groups, each behind a hyphen; an error when there is none. */
    public List<Yaml.Group> groups(String key, String ask) {
        if (isMissing(key, ask)) {
            return List.of();
        }
        List<Yaml> items = items(key, ask);
        if (items.isEmpty() && values.get(key) instanceof Yaml.Items none) {
            problems.error(none.at(), key + " is empty", ask);
        }
        return items.stream()
                .flatMap(item -> asGroup(item, "this is not a group of keys", ask).stream())
                .toList();
    }

    /** A list of names, which may be empty. */
    public List<Written> texts(String key, String example) {
        String expected = "expected a list: " + key + ": " + example;
        return items(key, expected).stream()
                .flatMap(item -> asText(item, expected))
                .toList();
    }

    public Span at() {
        return group.at();
    }

    /** Where the value of a key stands; the group when there is no such key. */
    public Span place(String key) {
        Yaml value = values.get(key);
        return value == null ? group.at() : value.at();
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    private boolean isMissing(String key, String ask) {
        boolean missing = !values.containsKey(key);
        if (missing && !misspelt.contains(key)) {
            problems.error(whenMissing, key + " is missing", ask);
        }
        return missing;
    }

    private List<Yaml> items(String key, String expected) {
        Yaml value = values.get(key);
        if (value instanceof Yaml.Items list) {
            return list.items();
        }
        if (value != null) {
            problems.error(value.at(), key + " is not a list", expected);
        }
        return List.of();
    }

    private Optional<Yaml.Group> asGroup(Yaml value, String wrong, String expected) {
        if (value instanceof Yaml.Group found) {
            return Optional.of(found);
        }
        problems.error(value.at(), wrong, expected);
        return Optional.empty();
    }

    private Stream<Written> asText(Yaml value, String expected) {
        if (value instanceof Yaml.Text text && !text.written().isEmpty()) {
            return Stream.of(text.written());
        }
        problems.error(value.at(), "this item is not a name", expected);
        return Stream.empty();
    }
}
