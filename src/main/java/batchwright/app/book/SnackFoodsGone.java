package batchwright.app.book;

import batchwright.answer.Today.DayByBook;
import batchwright.book.Book;
import batchwright.book.Event;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Foods of which the snacks of today and tomorrow take more than is at home, where the book has bought or counted them. */
final class SnackFoodsGone {
    private SnackFoodsGone() {}

    /** In words, one for each food. */
    static Stream<String> of(Kitchen kitchen, Book book, LocalDate day, Collection<PlanByBook> eaters) {
        Map<String, BigDecimal> wanted = new LinkedHashMap<>();
        for (LocalDate date : new LocalDate[] {day, day.plusDays(1)}) {
            eaters.stream()
                    .flatMap(eater -> eater.on(date).stream())
                    .map(DayByBook::snacks)
                    .flatMap(Collection::stream)
                    .forEach(snack -> add(wanted, snack));
        }
        return wanted.entrySet().stream()
                .filter(entry -> isInBook(book, entry.getKey()))
                .flatMap(entry -> says(kitchen, entry.getKey(), entry.getValue()).stream());
    }

    private static void add(Map<String, BigDecimal> wanted, PlannedSnack snack) {
        wanted.merge(snack.food(), snack.grams(), BigDecimal::add);
    }

    private static boolean isInBook(Book book, String food) {
        return book.all(Event.Bought.class).anyMatch(line -> line.event().food().equals(food))
                || book.all(Event.Counted.class)
                        .anyMatch(line -> line.event().food().food().equals(food));
    }

    private static Optional<String> says(Kitchen kitchen, String id, BigDecimal wanted) {
        return Optional.ofNullable(kitchen.foods().get(id))
                .filter(food -> edibleAtHome(kitchen, food).compareTo(wanted.subtract(BigDecimal.ONE)) < 0)
                .map(food -> "Snacks of today and tomorrow take %s g of %s, and by the book %s g are at home."
                        .formatted(whole(wanted), id, whole(edibleAtHome(kitchen, food))));
    }

    private static BigDecimal edibleAtHome(Kitchen kitchen, Food food) {
        return kitchen.pantryGrams(food).multiply(food.edibleShare(), MathContext.DECIMAL64);
    }

    private static String whole(BigDecimal grams) {
        return grams.setScale(0, RoundingMode.DOWN).toPlainString();
    }
}
