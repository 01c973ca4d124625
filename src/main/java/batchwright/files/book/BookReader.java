package batchwright.files.book;

import batchwright.book.Book;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** profiles/book.txt: a line for each event, its day first. A line that is wrong is undone by a line that repeats it. */
public final class BookReader {
    public static final String PATH = "profiles/book.txt";
    /** Where plans are kept, each by its cooking day. */
    public static final String PLANS = "profiles/plans";
    /** The first lines of a book. */
    public static final String HEAD = """
            # batchwright book 1
            # What happened in this kitchen. Lines are only added; a wrong one is undone by another.
            """;
    /** Stands behind a line that was cut off while it was written. */
    public static final String TORN = "# torn";

    private static final int NEWEST = 1;
    private static final Pattern VERSION = Pattern.compile("#\\s*batchwright book (\\d{1,4})\\s*");
    private static final String UNDO = "undo";

    private final SourceFile file;
    private final Problems problems;
    private final EventGrammar grammar;
    private final List<Entry> entries = new ArrayList<>();
    private final Set<Integer> undone = new LinkedHashSet<>();
    /** Where each event stands; made when the first line is undone. */
    private final Map<Happened, Deque<Integer>> places = new HashMap<>();

    /** Short names that were found to be right. */
    private final Set<String> names = new HashSet<>();

    private int placed;
    private @Nullable LocalDate lastDay;
    private String lastDayWritten = "";

    private record Happened(LocalDate day, Event event) {}

    private BookReader(SourceFile file, Problems problems) {
        this.file = file;
        this.problems = problems;
        this.grammar = new EventGrammar(problems);
    }

    /** All lines that can be read; empty when there is no book. */
    public static Book read(Optional<SourceFile> file, Problems problems) {
        return file.map(f -> new BookReader(f, problems).book()).orElse(Book.EMPTY);
    }

    private Book book() {
        if (isNewer()) {
            return Book.EMPTY;
        }
        int whole = file.lines().size();
        if (!file.ended() && !isNote(file.line(whole).strip())) {
            torn(whole);
            whole--;
        }
        for (int number = 1; number <= whole; number++) {
            line(number);
        }
        var standing = new ArrayList<Entry>();
        for (int i = 0; i < entries.size(); i++) {
            if (!undone.contains(i)) {
                standing.add(entries.get(i));
            }
        }
        return new Book(standing);
    }

    private boolean isNewer() {
        Matcher version = VERSION.matcher(file.line(1));
        if (!version.matches() || Integer.parseInt(version.group(1)) <= NEWEST) {
            return false;
        }
        problems.error(
                file.span(1, version.start(1) + 1, version.group(1).length()),
                "the book is written by a newer version of the program",
                "expected book %s: what a newer one means is not known here".formatted(NEWEST));
        return true;
    }

    private void torn(int number) {
        problems.warning(
                file.span(number, 1, file.line(number).length()),
                "the last line has no end, so it may be cut off; it is not read",
                "if it is whole, end it with Enter; else delete it");
    }

    private static boolean isNote(String stripped) {
        return stripped.isEmpty() || stripped.startsWith("#");
    }

    private void line(int number) {
        String line = file.line(number);
        String stripped = line.strip();
        if (isNote(stripped)) {
            return;
        }
        if (stripped.endsWith(TORN)) {
            problems.warning(
                    file.span(number, 1, line.length()),
                    "this line was cut off when it was written; it is not read",
                    "if it is whole, delete \"%s\"; else put a # before it".formatted(TORN));
            return;
        }
        var phrase = new Phrase(file, number, names, problems);
        try {
            LocalDate day = day(phrase);
            if (phrase.has(UNDO)) {
                undo(phrase);
            } else {
                entries.add(new Entry(phrase.whole(), day, grammar.read(phrase)));
            }
        } catch (WrongLine told) {
            // Its problem is among the others.
        }
    }

    /** Most lines are of the day of the line before. */
    private LocalDate day(Phrase phrase) throws WrongLine {
        if (lastDay == null || !phrase.has(lastDayWritten)) {
            lastDay = phrase.date();
            lastDayWritten = lastDay.toString();
        }
        return lastDay;
    }

    private void undo(Phrase phrase) throws WrongLine {
        LocalDate day = phrase.date();
        Event event = grammar.read(phrase);
        for (; placed < entries.size(); placed++) {
            Entry entry = entries.get(placed);
            places.computeIfAbsent(new Happened(entry.day(), entry.event()), h -> new ArrayDeque<>())
                    .push(placed);
        }
        Integer found = places.getOrDefault(new Happened(day, event), new ArrayDeque<>())
                .poll();
        if (found == null) {
            problems.warning(
                    phrase.whole(),
                    "there is no such line above that could be undone",
                    "expected the words of a line that stands");
        } else {
            undone.add(found);
        }
    }
}
