package batchwright.app.roster;

import batchwright.app.KitchenSource;
import batchwright.book.Book;
import batchwright.files.disk.Found;
import batchwright.files.disk.Read;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.text.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A kitchen that was read once, for the eaters of one pot.
 *
 * @param files what was not read yet comes from here
 * @param kitchen without its warnings, which were told
 * @param byName eaters by their short names
 */
record SharedKitchen(KitchenSource files, Kitchen kitchen, Read<Book> book, Map<String, Eater> byName)
        implements KitchenSource {
    @Override
    public Read<Kitchen> kitchen(LocalDate cookingDay) {
        return cookingDay.equals(kitchen.cookingDay())
                ? new Read<>(Optional.of(kitchen), List.of())
                : files.kitchen(cookingDay);
    }

    @Override
    public Read<Kitchen> foods(LocalDate cookingDay) {
        return kitchen(cookingDay);
    }

    @Override
    public Found<List<String>> eaters() {
        return new Found.There<>(byName.keySet().stream().sorted().toList());
    }

    @Override
    public Read<Eater> eater(String id, Optional<Kitchen> ignored) {
        return new Read<>(Optional.ofNullable(byName.get(id)), List.of());
    }

    @Override
    public Read<Book> book() {
        return book;
    }

    @Override
    public List<Problem> check(LocalDate cookingDay) {
        return files.check(cookingDay);
    }

    @Override
    public List<String> foodColumns() {
        return files.foodColumns();
    }

    @Override
    public Optional<Path> folder() {
        return files.folder();
    }
}
