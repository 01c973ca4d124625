package batchwright.app.profile;

import batchwright.files.page.EditedPage;
import batchwright.files.page.WrittenValue;
import java.util.List;
import java.util.Optional;

/** What one key of a page of the user's is to say from now on; a key of a group is written group.key. */
public sealed interface KeyChange {
    String key();

    /** @return the page with it; empty when that cannot surely be done */
    Optional<String> in(String page);

    /** As a line that somebody puts in by hand. */
    String line();

    static KeyChange text(String key, String value) {
        return new Text(key, value);
    }

    static KeyChange list(String key, List<String> items) {
        return new Items(key, List.copyOf(items));
    }

    /** The page says nothing of it any more. */
    static KeyChange gone(String key) {
        return new Gone(key);
    }

    /** One value. */
    record Text(String key, String value) implements KeyChange {
        @Override
        public Optional<String> in(String page) {
            return new EditedPage(page).with(key, value);
        }

        @Override
        public String line() {
            return key + ": " + WrittenValue.of(value);
        }
    }

    /** Several. */
    record Items(String key, List<String> items) implements KeyChange {
        @Override
        public Optional<String> in(String page) {
            return new EditedPage(page).with(key, items);
        }

        @Override
        public String line() {
            return key + ": " + WrittenValue.of(items);
        }
    }

    /** None. */
    record Gone(String key) implements KeyChange {
        @Override
        public Optional<String> in(String page) {
            return new EditedPage(page).without(key);
        }

        @Override
        public String line() {
            return "# to be taken out: " + key;
        }
    }
}
