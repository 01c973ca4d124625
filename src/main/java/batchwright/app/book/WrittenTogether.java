package batchwright.app.book;

import batchwright.book.Book;
import batchwright.book.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which lines of the book were written at once: of several, each has a note behind it that counts them, "# 2 of 5". */
final class WrittenTogether {
    private static final Pattern NOTE = Pattern.compile("# (\\d{1,4}) of (\\d{1,4})\\s*$");

    private WrittenTogether() {}

    private record Place(int number, int all) {
        static Optional<Place> of(Entry entry) {
            Matcher note = NOTE.matcher(entry.at().file().line(entry.line()));
            return note.find()
                    ? Optional.of(new Place(Integer.parseInt(note.group(1)), Integer.parseInt(note.group(2))))
                    : Optional.empty();
        }

        boolean isBefore(Place other) {
            return all == other.all && number < other.number;
        }
    }

    /** The lines with their notes; one alone needs none. */
    static List<String> noted(List<String> lines) {
        List<String> noted = new ArrayList<>();
        for (String line : lines) {
            noted.add(lines.size() == 1 ? line : "%s   # %s of %s".formatted(line, noted.size() + 1, lines.size()));
        }
        return noted;
    }

    /** Those that stand of what wrote the last one that stands, the last first; none when nothing stands. */
    static List<Entry> last(Book book) {
        List<Entry> backwards = book.entries().stream()
                .sorted(Comparator.comparingInt(Entry::line).reversed())
                .toList();
        List<Entry> together = new ArrayList<>();
        Optional<Place> later = Optional.empty();
        for (Entry entry : backwards) {
            Optional<Place> here = Place.of(entry);
            Optional<Place> after = later;
            boolean belongs = together.isEmpty()
                    || here.flatMap(place -> after.filter(place::isBefore)).isPresent();
            if (!belongs) {
                break;
            }
            together.add(entry);
            later = here;
        }
        return together;
    }
}
