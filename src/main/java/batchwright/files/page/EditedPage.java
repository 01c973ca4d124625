package batchwright.files.page;

import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A page of keys and values with one of its keys changed, added or taken out; every other line stays, byte for byte, and so does the comment
 * behind the value. A key of a group is written group.key. Every result is read again: only a page that says exactly what was wanted is
 * given out, so that a page in an unusual form is left alone rather than damaged.
 */
public final class EditedPage {
    private static final String NAME = "page";
    /** Behind every end of a line, which stays with it. */
    private static final Pattern LINES = Pattern.compile("(?<=\n)|(?<=\r)(?!\n)");

    private final String text;
    private final List<String> lines;
    private final Optional<Yaml.Group> page;

    public EditedPage(String text) {
        this.text = text;
        this.lines = text.isEmpty() ? List.of() : LINES.splitAsStream(text).toList();
        this.page = read(text);
    }

    /** Comments alone are a page to which lines can be added. */
    private static boolean isSilent(String text) {
        return text.lines().map(String::strip).allMatch(line -> line.isEmpty() || line.startsWith("#"));
    }

    private static Optional<Yaml.Group> read(String text) {
        SourceFile file = SourceFile.of(NAME, text);
        return isSilent(text)
                ? Optional.of(new Yaml.Group(List.of(), Span.whole(file)))
                : YamlPage.read(file, new Problems());
    }

    /** Text by key as it is written, of a list with commas between; empty when the page cannot be read. */
    public Map<String, String> says() {
        Map<String, String> all = new LinkedHashMap<>();
        page.ifPresent(said -> said.entries().forEach(entry -> put(all, "", entry)));
        return all;
    }

    private static void put(Map<String, String> all, String group, Yaml.Entry entry) {
        String key = group + entry.key().text();
        if (entry.value() instanceof Yaml.Text text) {
            all.put(key, text.written().text());
        } else if (entry.value() instanceof Yaml.Items items) {
            all.put(
                    key,
                    items.items().stream()
                            .filter(Yaml.Text.class::isInstance)
                            .map(item -> ((Yaml.Text) item).written().text())
                            .collect(Collectors.joining(", ")));
        } else if (entry.value() instanceof Yaml.Group inside && group.isEmpty()) {
            inside.entries().forEach(line -> put(all, key + ".", line));
        }
    }

    /** Empty when it cannot surely be done. */
    public Optional<String> with(String key, String value) {
        return with(key, WrittenValue.of(value), value);
    }

    /** The same with a list. */
    public Optional<String> with(String key, List<String> items) {
        return with(key, WrittenValue.of(items), List.copyOf(items));
    }

    private Optional<String> with(String key, String written, Object means) {
        KeyPath path = KeyPath.of(key);
        return page.filter(said -> PageSays.isClear(said, path)).flatMap(said -> {
            Optional<Yaml.Entry> there = path.in(said);
            String edited = there.map(entry -> changed(entry, written)).orElseGet(() -> added(said, path, written));
            return checked(edited, PageSays.with(said, path, means));
        });
    }

    /** Empty when it cannot surely be done; as it was when there is no such key. */
    public Optional<String> without(String key) {
        KeyPath path = KeyPath.of(key);
        return page.filter(said -> PageSays.isClear(said, path)).flatMap(said -> {
            Optional<Yaml.Entry> there = path.outermostLeftEmpty(said).or(() -> path.in(said));
            String edited = there.map(this::taken).orElse(text);
            return checked(edited, PageSays.without(said, path));
        });
    }

    private static Optional<String> checked(String edited, List<Object> wanted) {
        return read(edited).map(PageSays::all).filter(wanted::equals).map(all -> edited);
    }

    private String changed(Yaml.Entry entry, String written) {
        int first = entry.key().at().line() - 1;
        int last = lastLine(entry);
        String line = lines.get(first);
        int colon = afterColon(line, entry);
        if (last > first) {
            return IntStream.rangeClosed(first, last).anyMatch(l -> hasComment(lines.get(l)))
                    ? text
                    : replaced(first, last, line.substring(0, colon) + " " + written + end(lines.get(last)));
        }
        int begin = colon;
        while (begin < line.length() && line.charAt(begin) == ' ') {
            begin++;
        }
        int end = ValueEnd.in(line, begin);
        String before = begin > colon && begin < line.length() && line.charAt(begin) != '#'
                ? line.substring(0, begin)
                : line.substring(0, colon) + " ";
        String behind = line.substring(begin == end ? colon : end);
        return replaced(first, last, before + written + padded(behind, end - begin, written));
    }

    /** A comment keeps its column where there is room. */
    private static String padded(String behind, int lengthBefore, String written) {
        String comment = behind.stripLeading();
        int blanks = behind.length() - comment.length();
        if (!comment.startsWith("#")) {
            return behind;
        }
        return " ".repeat(Math.max(1, blanks + lengthBefore - written.length())) + comment;
    }

    private String added(Yaml.Group said, KeyPath path, String written) {
        Optional<Yaml.Entry> group = path.group().flatMap(name -> PageSays.entry(said, name));
        if (group.isPresent()
                && group.get().value() instanceof Yaml.Group inside
                && !inside.entries().isEmpty()) {
            Yaml.Entry last = inside.entries().get(inside.entries().size() - 1);
            String indent = " ".repeat(last.key().at().column() - 1);
            return inserted(lastLine(last) + 1, indent + path.last() + ": " + written);
        }
        String start = " "
                .repeat(
                        said.entries().isEmpty()
                                ? 0
                                : said.entries().get(0).key().at().column() - 1);
        String line = path.group()
                .map(name -> start + name + ":" + usualEnd() + start + "  " + path.last() + ": " + written)
                .orElse(start + path.last() + ": " + written);
        return inserted(lines.size(), line);
    }

    private String taken(Yaml.Entry entry) {
        int first = entry.key().at().line() - 1;
        int last = lastLine(entry);
        List<String> left = new ArrayList<>(lines.subList(0, first));
        left.addAll(lines.subList(last + 1, lines.size()));
        return String.join("", left);
    }

    private String replaced(int first, int last, String line) {
        List<String> all = new ArrayList<>(lines.subList(0, first));
        all.add(line);
        all.addAll(lines.subList(last + 1, lines.size()));
        return String.join("", all);
    }

    /** @param at index of the line that will be behind it */
    private String inserted(int at, String line) {
        List<String> all = new ArrayList<>(lines);
        if (at > 0 && end(lines.get(at - 1)).isEmpty()) {
            all.add(at, usualEnd() + line);
        } else {
            all.add(at, line + usualEnd());
        }
        return String.join("", all);
    }

    /** The index of the last line that belongs to an entry: comments and empty lines behind it do not. */
    private int lastLine(Yaml.Entry entry) {
        int indent = entry.key().at().column() - 1;
        int last = entry.key().at().line() - 1;
        for (int l = last + 1; l < lines.size(); l++) {
            String line = lines.get(l).strip();
            boolean silent = line.isEmpty() || line.startsWith("#");
            if (!silent && !isInside(lines.get(l), indent)) {
                return last;
            }
            last = silent ? last : l;
        }
        return last;
    }

    private static boolean isInside(String line, int indent) {
        int own = line.length() - line.stripLeading().length();
        return own > indent || (own == indent && line.strip().startsWith("- "));
    }

    private static int afterColon(String line, Yaml.Entry entry) {
        int from = entry.key().at().column() - 1 + entry.key().at().length();
        int colon = line.indexOf(':', from);
        return colon < 0 ? line.stripTrailing().length() : colon + 1;
    }

    /** Or something that looks like one, which is reason enough for care. */
    private static boolean hasComment(String line) {
        return line.indexOf('#') >= 0;
    }

    private String usualEnd() {
        return lines.isEmpty() || end(lines.get(0)).isEmpty() ? "\n" : end(lines.get(0));
    }

    private static String end(String line) {
        OptionalInt from = IntStream.range(0, line.length())
                .filter(i -> line.charAt(i) == '\n' || line.charAt(i) == '\r')
                .findFirst();
        return from.isPresent() ? line.substring(from.getAsInt()) : "";
    }
}
