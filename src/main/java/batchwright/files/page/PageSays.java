package batchwright.files.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a page says, without the places where it does: to be compared. Of a group, a list of its keys and values in their order. */
final class PageSays {
    private record Line(String key, Object value) {}

    private PageSays() {}

    static List<Object> all(Yaml.Group page) {
        return group(page);
    }

    private static List<Object> group(Yaml.Group group) {
        return new ArrayList<>(group.entries().stream()
                .map(entry -> new Line(entry.key().text(), value(entry.value())))
                .toList());
    }

    private static Object value(Yaml value) {
        if (value instanceof Yaml.Text text) {
            return text.written().text();
        }
        return value instanceof Yaml.Items items
                ? items.items().stream().map(PageSays::value).toList()
                : group((Yaml.Group) value);
    }

    /** The first line with this key. */
    static Optional<Yaml.Entry> entry(Yaml.Group group, String key) {
        return group.entries().stream()
                .filter(entry -> entry.key().text().equals(key))
                .findFirst();
    }

    /** Whether neither the key nor its group is there twice, and the group is one of keys, if it is there. */
    static boolean isClear(Yaml.Group page, KeyPath path) {
        if (path.group().isEmpty()) {
            return count(page, path.last()) <= 1;
        }
        Optional<Yaml.Entry> group = entry(page, path.group().get());
        return count(page, path.group().get()) <= 1
                && (group.isEmpty()
                        || (group.get().value() instanceof Yaml.Group inside && count(inside, path.last()) <= 1));
    }

    private static long count(Yaml.Group group, String key) {
        return group.entries().stream()
                .filter(entry -> entry.key().text().equals(key))
                .count();
    }

    static List<Object> with(Yaml.Group page, KeyPath path, Object means) {
        if (path.group().isEmpty()) {
            return put(all(page), path.last(), means);
        }
        String name = path.group().get();
        List<Object> inside =
                entry(page, name).map(e -> group((Yaml.Group) e.value())).orElseGet(ArrayList::new);
        return put(all(page), name, put(inside, path.last(), means));
    }

    static List<Object> without(Yaml.Group page, KeyPath path) {
        if (path.group().isEmpty()) {
            return remove(all(page), path.last());
        }
        String name = path.group().get();
        Optional<Yaml.Entry> group = entry(page, name);
        if (group.isEmpty()) {
            return all(page);
        }
        List<Object> inside = remove(group((Yaml.Group) group.get().value()), path.last());
        return inside.isEmpty() ? remove(all(page), name) : put(all(page), name, inside);
    }

    private static List<Object> put(List<Object> lines, String key, Object value) {
        var line = new Line(key, value);
        for (int i = 0; i < lines.size(); i++) {
            if (((Line) lines.get(i)).key().equals(key)) {
                lines.set(i, line);
                return lines;
            }
        }
        lines.add(line);
        return lines;
    }

    private static List<Object> remove(List<Object> lines, String key) {
        lines.removeIf(line -> ((Line) line).key().equals(key));
        return lines;
    }
}
