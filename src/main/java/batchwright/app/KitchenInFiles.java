package batchwright.app;

import batchwright.book.Book;
import batchwright.files.KitchenReader;
import batchwright.files.book.BookDoubts;
import batchwright.files.book.BookReader;
import batchwright.files.dishes.MinutesDoubts;
import batchwright.files.disk.DataFiles;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.Found;
import batchwright.files.disk.Read;
import batchwright.files.foods.CatalogueColumns;
import batchwright.files.profile.EaterReader;
import batchwright.files.shop.PriceDates;
import batchwright.files.value.Problems;
import batchwright.files.value.Sources;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A kitchen in foods/ and profiles/, one profile per eater. */
final class KitchenInFiles implements KitchenSource {
    static final String FOLDER = "profiles";
    static final String ENDING = ".yaml";

    private final DataFiles files;

    KitchenInFiles(DataFiles files) {
        this.files = files;
    }

    @Override
    public Read<Kitchen> kitchen(LocalDate cookingDay) {
        return KitchenReader.read(files, cookingDay);
    }

    @Override
    public Read<Kitchen> foods(LocalDate cookingDay) {
        return KitchenReader.readFoods(files, cookingDay);
    }

    @Override
    public Found<List<String>> eaters() {
        return files.list(FOLDER)
                .match(
                        Found.Absent::new,
                        entries -> new Found.There<>(entries.stream()
                                .map(DataFiles.Entry::path)
                                .filter(path -> path.endsWith(ENDING))
                                .map(KitchenInFiles::idOf)
                                .toList()),
                        Found.Unreadable::new);
    }

    @Override
    public Read<Eater> eater(String id, Optional<Kitchen> kitchen) {
        return EaterReader.read(files, pathOf(id), kitchen);
    }

    @Override
    public Read<Book> book() {
        var problems = new Problems();
        Book book = BookReader.read(new Sources(files, problems).find(BookReader.PATH), problems);
        return problems.result(() -> book);
    }

    @Override
    public Optional<BookDoubts> doubts(Kitchen kitchen) {
        return KitchenReader.readBeforeBook(files, kitchen.cookingDay()).value().map(before -> {
            List<String> ids = eaters().match(List::of, all -> all, problem -> List.of());
            Map<String, Eater> readable = new HashMap<>();
            ids.forEach(id -> eater(id, Optional.of(kitchen)).value().ifPresent(eater -> readable.put(id, eater)));
            return new BookDoubts(before.withDishes(kitchen.dishes()).with(kitchen.shelves()), ids, readable);
        });
    }

    @Override
    public Read<List<SourceFile>> keptPlans() {
        var problems = new Problems();
        var sources = new Sources(files, problems);
        List<SourceFile> plans = sources.list(BookReader.PLANS).stream()
                .map(DataFiles.Entry::path)
                .filter(path -> path.endsWith(".json"))
                .flatMap(path -> sources.find(path).stream())
                .toList();
        return problems.result(() -> plans);
    }

    /** A folder that cannot be read is among the problems of the kitchen. */
    @Override
    public List<Problem> check(LocalDate cookingDay) {
        Read<Kitchen> kitchen = kitchen(cookingDay);
        List<Problem> problems = new ArrayList<>(kitchen.problems());
        kitchen.value().map(k -> PriceDates.warnings(files, k)).ifPresent(problems::addAll);
        kitchen.value().map(k -> MinutesDoubts.of(files, k)).ifPresent(problems::addAll);
        List<String> ids = eaters().match(List::of, all -> all, problem -> List.of());
        ids.forEach(id -> problems.addAll(eater(id, kitchen.value()).problems()));
        Book book = book().value().orElse(Book.EMPTY);
        if (!book.entries().isEmpty()) {
            kitchen.value().flatMap(this::doubts).ifPresent(doubts -> problems.addAll(doubts.of(book)));
        }
        return problems;
    }

    @Override
    public List<String> foodColumns() {
        return CatalogueColumns.of(files);
    }

    @Override
    public Optional<Path> folder() {
        return files instanceof FolderFiles own ? Optional.of(own.path("")) : Optional.empty();
    }

    static String pathOf(String id) {
        return FOLDER + "/" + id + ENDING;
    }

    static String idOf(String path) {
        String file = path.substring(path.lastIndexOf('/') + 1);
        return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
    }
}
