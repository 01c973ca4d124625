package batchwright.app.book;

import batchwright.answer.BookAnswer;
import batchwright.answer.Fault;
import batchwright.answer.PotAnswer;
import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.Book;
import batchwright.book.Entry;
import batchwright.book.Event;
import batchwright.book.EventWords;
import batchwright.files.book.BookDoubts;
import batchwright.files.book.BookReader;
import batchwright.files.disk.FolderFiles;
import batchwright.files.value.Problems;
import batchwright.food.Kitchen;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.write.AppendedFile;
import batchwright.write.CannotWrite;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Writes what happened into the book. While it looks at what is there and adds to it no other program can add anything. What
 * contradicts the book, or can hardly be, is refused unless the user is sure.
 */
public final class WriteInBook {
    private static final String TYPED = "(typed)";
    /** So many are told at once. */
    private static final int MOST_DOUBTS = 10;

    private final Workspace workspace;
    private final Kitchen kitchen;
    private final boolean sure;
    private final List<String> written = new ArrayList<>();

    /** @param sure whether doubts are no obstacle */
    public WriteInBook(Workspace workspace, Kitchen kitchen, boolean sure) {
        this.workspace = workspace;
        this.kitchen = kitchen;
        this.sure = sure;
    }

    /**
     * Adds what the user says happened on a day: a line as it stands in the book, or "as planned" in place of what a kept plan knows.
     *
     * @throws Refused when it is not understood or cannot be
     */
    public BookAnswer add(String words, LocalDate day) {
        return add(words, day, Map.of());
    }

    /** The same, when containers were filled from a pot as it came out. */
    public BookAnswer add(String words, LocalDate day, PotAnswer pot) {
        Map<String, Event.Holds> holds = new HashMap<>();
        pot.fills()
                .forEach(fill -> holds.put(
                        fill.eater(),
                        new Event.Holds(
                                Optional.of(fill.kcal().now()),
                                Optional.of(fill.proteinG().now()))));
        return add(words, day, holds);
    }

    /** @param holds what one of each eater's containers holds, where it is not what was planned */
    private BookAnswer add(String words, LocalDate day, Map<String, Event.Holds> holds) {
        var planned = new AsPlanned(workspace, kitchen, day, holds);
        return append(book -> {
            List<Event> shortly = planned.events(words, book);
            if (!sure) {
                planned.before(shortly, book).ifPresent(WriteInBook::refuseTwice);
            }
            List<Event> events = shortly.isEmpty() ? List.of(event(planned.inGrams(words), day)) : shortly;
            if (!sure && events.get(0) instanceof Event.Adopted adopted) {
                AdoptedByHand.check(workspace.quietly(), adopted);
            }
            List<String> lines = events.stream()
                    .map(event ->
                            EventWords.line(day, new Completed(kitchen, workspace.keptPlans(), book, day).of(event)))
                    .toList();
            check(book, lines);
            return lines;
        });
    }

    /**
     * Undoes a line by another.
     *
     * @param number of the line; empty for the last one that stands
     */
    public BookAnswer undo(OptionalInt number) {
        return append(book -> {
            Optional<Entry> wanted = book.entries().stream()
                    .filter(entry -> number.isEmpty() || entry.line() == number.getAsInt())
                    .max(Comparator.comparingInt(Entry::line));
            Entry entry = wanted.orElseThrow(() -> number.isEmpty()
                    ? Refused.because("there is nothing to undo", "The book has no line that stands.")
                    : Refused.because(
                            "line %s of the book is none that stands".formatted(number.getAsInt()),
                            "Name the number of a line that tells what happened and was not undone."));
            return List.of(EventWords.undo(workspace.cookingDay(), entry));
        });
    }

    @FunctionalInterface
    private interface Addition {
        List<String> to(Book book);
    }

    private BookAnswer append(Addition addition) {
        FolderFiles folder = workspace.ownFolder("so there is no book");
        String shown = folder.shown(BookReader.PATH);
        try {
            new AppendedFile(folder.path(BookReader.PATH), BookReader.HEAD, BookReader.TORN).append(text -> {
                var file = SourceFile.of(shown, text);
                written.addAll(addition.to(read(file)));
                return WrittenTogether.noted(written);
            });
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
        return new BookAnswer(shown, written);
    }

    /**
     * Undoes all lines of what wrote the last line that stands.
     *
     * @see WrittenTogether
     */
    public BookAnswer undoAll() {
        return append(book -> {
            List<Entry> last = WrittenTogether.last(book);
            if (last.isEmpty()) {
                throw Refused.because("there is nothing to undo", "The book has no line that stands.");
            }
            return last.stream()
                    .map(entry -> EventWords.undo(workspace.cookingDay(), entry))
                    .toList();
        });
    }

    private static Book read(SourceFile file) {
        var problems = new Problems();
        Book book = BookReader.read(Optional.of(file), problems);
        refuseErrors(problems);
        return book;
    }

    private static void refuseErrors(Problems problems) {
        if (problems.errors() > 0) {
            throw Refused.by(problems.list().stream().filter(Problem::isError).toList());
        }
    }

    private static void refuseTwice(Entry entry) {
        throw Refused.because(
                "\"%s\" was written before, line %s".formatted(EventWords.of(entry.event()), entry.line()),
                "Nothing was written. If it happened again, say that you are sure.");
    }

    private static Event event(String words, LocalDate day) {
        return read(new SourceFile(TYPED, List.of(day + " " + words)))
                .last()
                .orElseThrow(() -> Refused.because(
                        "\"" + words + "\" says nothing", "Say what happened, as the lines of the book do."))
                .event();
    }

    /** Whatever was not in doubt before the new lines. */
    private void check(Book book, List<String> lines) {
        Optional<BookDoubts> doubts =
                sure ? Optional.empty() : workspace.source().doubts(kitchen);
        if (doubts.isEmpty()) {
            return;
        }
        Book typed = read(new SourceFile(TYPED, lines));
        Set<String> before = new HashSet<>();
        doubts.get().of(book).forEach(problem -> before.add(key(problem)));
        var after = new Book(
                Stream.concat(book.entries().stream(), typed.entries().stream()).toList());
        List<Problem> more = doubts.get().of(after).stream()
                .filter(problem -> !before.contains(key(problem)))
                .toList();
        if (!more.isEmpty()) {
            throw Refused.by(faults(more));
        }
    }

    /** One for each doubt; what is to be done about several of a kind is said once, behind the last of them. */
    private static Stream<Fault> faults(List<Problem> doubts) {
        List<Fault> faults = new ArrayList<>();
        List<Problem> shown = doubts.subList(0, Math.min(MOST_DOUBTS, doubts.size()));
        for (int i = 0; i < shown.size(); i++) {
            Problem doubt = shown.get(i);
            boolean last = i == shown.size() - 1;
            boolean again = !last && shown.get(i + 1).expected().equals(doubt.expected());
            String cure = again ? "" : sentence(doubt.expected());
            String more = shown.size() < doubts.size() ? " And %s more.".formatted(doubts.size() - shown.size()) : "";
            String end = last ? more + " Nothing was written. If it is right, say that you are sure." : "";
            faults.add(Fault.of(says(doubt), (cure + end).strip()));
        }
        return faults.stream().distinct();
    }

    private static String says(Problem problem) {
        String nearest =
                problem.nearest().map(name -> " (nearest: " + name + ")").orElse("");
        String line = problem.at().file().path().equals(TYPED)
                ? ""
                : " (line " + problem.at().line() + " of the book)";
        return problem.wrong() + nearest + line;
    }

    private static String sentence(String text) {
        String end = text.endsWith("?") || text.endsWith(".") ? "" : ".";
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + end;
    }

    private static String key(Problem problem) {
        return problem.at().file().path() + problem.at().line() + problem.wrong();
    }
}
