package batchwright.files.page;

import java.util.Optional;

/**
 * A key of a page, or of one of its groups.
 *
 * @param group empty for a key of the page itself
 */
record KeyPath(Optional<String> group, String last) {
    /** @param key such as goal or snacks.only */
    static KeyPath of(String key) {
        int dot = key.indexOf('.');
        return dot < 0
                ? new KeyPath(Optional.empty(), key)
                : new KeyPath(Optional.of(key.substring(0, dot)), key.substring(dot + 1));
    }

    /** The line it has in a page. */
    Optional<Yaml.Entry> in(Yaml.Group page) {
        return group.isEmpty() ? PageSays.entry(page, last) : inside(page).flatMap(g -> PageSays.entry(g, last));
    }

    private Optional<Yaml.Group> inside(Yaml.Group page) {
        return group.flatMap(name -> PageSays.entry(page, name))
                .filter(entry -> entry.value() instanceof Yaml.Group)
                .map(entry -> (Yaml.Group) entry.value());
    }

    /** Its group, when that says nothing else. */
    Optional<Yaml.Entry> outermostLeftEmpty(Yaml.Group page) {
        return inside(page)
                .filter(g -> g.entries().size() == 1 && PageSays.entry(g, last).isPresent())
                .flatMap(g -> PageSays.entry(page, group.orElseThrow()));
    }
}
