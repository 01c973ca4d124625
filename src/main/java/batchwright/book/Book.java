package batchwright.book;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All lines that stand: those that were undone are not among them.
 *
 * @param entries by day, and those of a day in the order of the file
 */
public record Book(List<Entry> entries) {
    public static final Book EMPTY = new Book(List.of());

    public Book {
        entries = entries.stream().sorted(Comparator.comparing(Entry::day)).toList();
    }

    /** Without what happened later. */
    public Book until(LocalDate day) {
        return new Book(
                entries.stream().filter(entry -> !entry.day().isAfter(day)).toList());
    }

    /** The line that was written last. */
    public Optional<Entry> last() {
        return entries.stream().max(Comparator.comparingInt(Entry::line));
    }

    public Stream<Entry> on(LocalDate day) {
        return entries.stream().filter(entry -> entry.day().equals(day));
    }

    /** The events of a kind, each with its line. */
    public <T extends Event> Stream<Of<T>> all(Class<T> kind) {
        return entries.stream()
                .filter(entry -> kind.isInstance(entry.event()))
                .map(entry -> new Of<>(entry, kind.cast(entry.event())));
    }

    /** An event of a known kind. */
    public record Of<T extends Event>(Entry entry, T event) {
        public LocalDate day() {
            return entry.day();
        }
    }
}
