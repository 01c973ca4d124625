package batchwright.app.memory;

import batchwright.app.KitchenSource;
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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A kitchen in a folder, read again only after one of its files changed, whoever changed it. */
public final class RememberedKitchen implements KitchenSource {
    private final KitchenSource source;
    private final Memory memory;

    /** What was read, and as of which files; shared by those who read the same folder. */
    public static final class Memory {
        private Optional<FilesStamp> stamp = Optional.empty();
        private final Map<String, Object> read = new HashMap<>();

        @SuppressWarnings("unchecked")
        private synchronized <T> T of(Path folder, String what, Supplier<T> reading) {
            Optional<FilesStamp> now = FilesStamp.of(folder);
            if (now.isEmpty() || !now.equals(stamp)) {
                read.clear();
                stamp = now;
            }
            Object known = read.get(what);
            if (known == null) {
                known = reading.get();
                // A file may have changed while it was read: then it is read once more next time.
                if (now.isPresent() && FilesStamp.of(folder).equals(now)) {
                    read.put(what, known);
                }
            }
            return (T) known;
        }
    }

    public RememberedKitchen(KitchenSource source, Memory memory) {
        this.source = source;
        this.memory = memory;
    }

    private <T> T remembered(String what, Supplier<T> reading) {
        return source.folder()
                .map(folder -> memory.of(folder, folder + " " + what, reading))
                .orElseGet(reading);
    }

    @Override
    public Read<Kitchen> kitchen(LocalDate cookingDay) {
        return remembered("kitchen " + cookingDay, () -> source.kitchen(cookingDay));
    }

    @Override
    public Read<Kitchen> foods(LocalDate cookingDay) {
        return remembered("foods " + cookingDay, () -> source.foods(cookingDay));
    }

    @Override
    public Found<List<String>> eaters() {
        return source.eaters();
    }

    @Override
    public Read<Eater> eater(String id, Optional<Kitchen> kitchen) {
        return source.eater(id, kitchen);
    }

    @Override
    public Read<Book> book() {
        return remembered("book", source::book);
    }

    @Override
    public Read<List<SourceFile>> keptPlans() {
        return remembered("plans", source::keptPlans);
    }

    @Override
    public Optional<BookDoubts> doubts(Kitchen kitchen) {
        return source.doubts(kitchen);
    }

    @Override
    public List<Problem> check(LocalDate cookingDay) {
        return source.check(cookingDay);
    }

    @Override
    public List<String> foodColumns() {
        return source.foodColumns();
    }

    @Override
    public Optional<Path> folder() {
        return source.folder();
    }
}
