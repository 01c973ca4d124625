package batchwright.book;

import batchwright.book.Event.AteFood;
import batchwright.book.Event.Bought;
import batchwright.book.Event.Cooked;
import batchwright.book.Event.Counted;
import batchwright.book.Event.FoodGone;
import batchwright.book.Event.Weight;
import batchwright.food.CoreTemperature;
import batchwright.food.Food;
import batchwright.food.Lot;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is at home, by what was there before the book began and what it says since. Of a food the earliest date that is still good is
 * used first. A stock-take counts for more than all before it.
 */
public final class FoodStock {
    /** Raw meat, fish and egg bought without a date: published home advice is 1-2 days for most of them (FoodKeeper data). */
    private static final int RAW_DAYS = 2;
    /** Eggs in their shells, in the fridge: published home advice is 3-5 weeks (FoodKeeper data, from memory). */
    private static final int EGG_DAYS = 21;
    /** Other perishable foods bought without a date. Our choice. */
    private static final int PERISHABLE_DAYS = 5;
    /** Scales and yields are not better than this: less is not missed [g]. */
    private static final BigDecimal UNNOTICED = BigDecimal.valueOf(5);

    private final Map<String, Food> foods;
    private final Map<Food, List<Lot>> lots = new LinkedHashMap<>();
    private final List<Overdrawn> shortfalls = new ArrayList<>();

    private FoodStock(Map<String, Food> foods) {
        this.foods = foods;
    }

    /**
     * @param before what was at home before the book began
     * @param foods by short name; lines about others change nothing
     */
    public static FoodStock of(Book book, Map<Food, List<Lot>> before, Map<String, Food> foods) {
        var stock = new FoodStock(foods);
        before.forEach((food, lots) -> stock.lots.put(food, new ArrayList<>(lots)));
        book.entries().forEach(stock::take);
        stock.lots.values().removeIf(List::isEmpty);
        return stock;
    }

    /** Grams as purchased. */
    public Map<Food, List<Lot>> lots() {
        return lots;
    }

    /** Lines by which more was used than was there. */
    public List<Overdrawn> shortfalls() {
        return List.copyOf(shortfalls);
    }

    private void take(Entry entry) {
        if (entry.event() instanceof Bought bought) {
            food(bought.food()).ifPresent(food -> add(food, bought, entry.day()));
        } else if (entry.event() instanceof Cooked cooked) {
            cooked.foods().forEach(weight -> useEdible(entry, weight));
        } else if (entry.event() instanceof AteFood ate) {
            useEdible(entry, ate.food());
        } else if (entry.event() instanceof FoodGone gone) {
            food(gone.food().food())
                    .ifPresent(food -> use(entry, food, gone.food().grams()));
        } else if (entry.event() instanceof Counted counted) {
            food(counted.food().food()).ifPresent(food -> count(food, counted, entry.day()));
        }
    }

    private Optional<Food> food(String id) {
        return Optional.ofNullable(foods.get(id));
    }

    private List<Lot> of(Food food) {
        return lots.computeIfAbsent(food, f -> new ArrayList<>());
    }

    private void add(Food food, Bought bought, LocalDate day) {
        Optional<LocalDate> useBy = bought.useBy().or(() -> days(food).map(day::plusDays));
        of(food).add(new Lot(bought.grams().multiply(BigDecimal.valueOf(bought.count())), useBy));
    }

    private static Optional<Integer> days(Food food) {
        Optional<CoreTemperature> raw = CoreTemperature.of(food);
        if (!food.perishable()) {
            return raw.filter(core -> core == CoreTemperature.EGG).map(egg -> EGG_DAYS);
        }
        return Optional.of(raw.isPresent() ? RAW_DAYS : PERISHABLE_DAYS);
    }

    /** A stock-take makes nothing younger: without a date, what is counted has those of what was there, the earliest that is still good first. */
    private void count(Food food, Counted counted, LocalDate day) {
        List<Lot> before = inOrder(food, day);
        of(food).clear();
        BigDecimal rest = counted.food().grams();
        if (counted.useBy().isEmpty()) {
            for (Lot lot : before) {
                BigDecimal still = rest.min(lot.grams());
                rest = rest.subtract(still);
                addLot(food, still, lot.useBy());
            }
        }
        Optional<LocalDate> asBefore = before.stream().findFirst().flatMap(Lot::useBy);
        addLot(
                food,
                rest,
                counted.useBy().or(() -> asBefore).or(() -> days(food).map(day::plusDays)));
    }

    private void addLot(Food food, BigDecimal grams, Optional<LocalDate> useBy) {
        if (grams.signum() <= 0) {
            return;
        }
        List<Lot> lots = of(food);
        BigDecimal alike = lots.stream()
                .filter(lot -> lot.useBy().equals(useBy))
                .map(Lot::grams)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        lots.removeIf(lot -> lot.useBy().equals(useBy));
        lots.add(new Lot(alike.add(grams), useBy));
    }

    /** In the order in which they are used. */
    private List<Lot> inOrder(Food food, LocalDate day) {
        return of(food).stream()
                .sorted(Comparator.comparing((Lot lot) -> !lot.keepsUntil(day))
                        .thenComparing(lot -> lot.useBy().orElse(LocalDate.MAX)))
                .toList();
    }

    private void useEdible(Entry entry, Weight weight) {
        food(weight.food())
                .ifPresent(food -> use(entry, food, weight.grams().divide(food.edibleShare(), MathContext.DECIMAL64)));
    }

    private void use(Entry entry, Food food, BigDecimal grams) {
        List<Lot> inOrder = inOrder(food, entry.day());
        of(food).clear();
        BigDecimal missing = grams;
        for (Lot lot : inOrder) {
            BigDecimal taken = missing.min(lot.grams());
            missing = missing.subtract(taken);
            addLot(food, lot.grams().subtract(taken), lot.useBy());
        }
        if (missing.compareTo(UNNOTICED) > 0) {
            shortfalls.add(new Overdrawn(
                    entry,
                    "%s g of %s more than there was"
                            .formatted(missing.setScale(0, RoundingMode.HALF_UP).toPlainString(), food.id())));
        }
    }
}
