package batchwright.app;

import batchwright.book.Book;
import batchwright.files.book.BookDoubts;
import batchwright.files.disk.Found;
import batchwright.files.disk.Read;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Where a kitchen and its eaters are kept. Use cases know only this; files are one such place ({@link KitchenInFiles}), another
 * store is another class.
 */
public interface KitchenSource {
    /**
     * All that is known about food.
     *
     * @param cookingDay from which use-by dates and ages of prices are counted
     */
    Read<Kitchen> kitchen(LocalDate cookingDay);

    /** The kitchen without its dishes. */
    Read<Kitchen> foods(LocalDate cookingDay);

    /** Ids of all eaters, in alphabetical order. */
    Found<List<String>> eaters();

    /** @param kitchen to find foods and dishes in; empty when it has errors of its own */
    Read<Eater> eater(String id, Optional<Kitchen> kitchen);

    /** What happened in the kitchen. */
    default Read<Book> book() {
        return new Read<>(Optional.of(Book.EMPTY), List.of());
    }

    /** The plans that were kept, each as it was written. */
    default Read<List<SourceFile>> keptPlans() {
        return new Read<>(Optional.of(List.of()), List.of());
    }

    /**
     * Tells what contradicts itself in a book; empty when that cannot be known.
     *
     * @param kitchen as it is on the day
     */
    default Optional<BookDoubts> doubts(Kitchen kitchen) {
        return Optional.empty();
    }

    /** Everything that is wrong or doubtful. */
    List<Problem> check(LocalDate cookingDay);

    /** Names of the columns that a food is written with. */
    List<String> foodColumns();

    /** The user's own folder, which may be written into; empty when there is none. */
    Optional<Path> folder();
}
