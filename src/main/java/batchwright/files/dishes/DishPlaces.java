package batchwright.files.dishes;

import batchwright.files.page.Yaml;
import batchwright.text.Span;
import java.util.List;
import java.util.Optional;

/** Where the keys of the parts of a dish stand on its page, for what is noticed only when the dish is read as a whole. */
record DishPlaces(Yaml.Group page) {
    /** @param part counted from 0 */
    Span of(int part, String key) {
        return value(page, "parts")
                .filter(Yaml.Items.class::isInstance)
                .map(parts -> ((Yaml.Items) parts).items())
                .filter(parts -> part < parts.size())
                .map(parts -> parts.get(part))
                .flatMap(group -> value(group, key))
                .map(Yaml::at)
                .orElse(page.at());
    }

    private static Optional<Yaml> value(Yaml group, String key) {
        List<Yaml.Entry> entries = group instanceof Yaml.Group keys ? keys.entries() : List.of();
        return entries.stream()
                .filter(entry -> entry.key().text().equals(key))
                .map(Yaml.Entry::value)
                .findFirst();
    }
}
