package batchwright.files;

import batchwright.book.Book;
import batchwright.book.FoodStock;
import batchwright.files.book.BookReader;
import batchwright.files.dishes.AmountGrammar;
import batchwright.files.dishes.DishReader;
import batchwright.files.dishes.MixReader;
import batchwright.files.disk.DataFiles;
import batchwright.files.disk.Read;
import batchwright.files.foods.CatalogueTable;
import batchwright.files.foods.FoodNames;
import batchwright.files.foods.LabelsTable;
import batchwright.files.foods.MeasureNames;
import batchwright.files.foods.MeasuresTable;
import batchwright.files.foods.Yields;
import batchwright.files.shop.PantryTable;
import batchwright.files.shop.ShopTable;
import batchwright.files.value.Problems;
import batchwright.files.value.Sources;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Shelves;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything in foods/ and the pantry: all files are read in one run and all their problems named. */
public final class KitchenReader {
    private static final String DISHES = "foods/dishes";
    private static final String INIT = "; it is one of the starter files";

    private final Problems problems = new Problems();
    private final Sources sources;
    private final Map<Food, Span> cooked = new LinkedHashMap<>();

    private final LocalDate cookingDay;
    /** The last day of the book that counts. */
    private LocalDate asOf;

    private KitchenReader(DataFiles files, LocalDate cookingDay) {
        this.cookingDay = cookingDay;
        this.asOf = cookingDay;
        this.sources = new Sources(files, problems);
    }

    public static Read<Kitchen> read(DataFiles files, LocalDate cookingDay) {
        return new KitchenReader(files, cookingDay).kitchen(true);
    }

    /** The kitchen without its dishes, and with what was at home before the book began. */
    public static Read<Kitchen> readBeforeBook(DataFiles files, LocalDate cookingDay) {
        var reader = new KitchenReader(files, cookingDay);
        reader.asOf = LocalDate.MIN;
        return reader.kitchen(false);
    }

    /** The kitchen without its dishes, whose files are not opened: for questions about foods alone. */
    public static Read<Kitchen> readFoods(DataFiles files, LocalDate cookingDay) {
        return new KitchenReader(files, cookingDay).kitchen(false);
    }

    private Read<Kitchen> kitchen(boolean withDishes) {
        FoodNames foods = CatalogueTable.read(
                sources.need("foods/catalogue.csv", "expected the table of foods" + INIT), problems);
        int before = problems.errors();
        Optional<SourceFile> labels = sources.find("foods/labels.csv");
        if (problems.errors() > before) {
            foods.unknown(); // there is such a table, but it cannot be read
        }
        var defined = LabelsTable.read(labels, foods, problems);
        MeasureNames measures = MeasuresTable.read(
                sources.need("foods/measures.csv", "expected the table of household measures" + INIT),
                foods,
                defined,
                problems);
        Yields yields = Yields.read(
                sources.need("foods/yields.csv", "expected the table of cooked yields" + INIT), foods, problems);
        ShopTable shop = ShopTable.read(
                sources.need("foods/shop.csv", "expected the table of packs and prices" + INIT), foods, problems);
        var reader = dishReader(foods, measures, yields);
        Map<String, Dish> dishes = withDishes ? everyday(reader) : Map.of();
        Shelves shelves = withDishes ? shelves(reader, dishes.keySet()) : Shelves.NONE;
        Map<Food, List<Lot>> beforeBook =
                PantryTable.read(sources.find("profiles/pantry.csv"), foods, measures, problems);
        Book book = BookReader.read(sources.find(BookReader.PATH), problems).until(asOf);
        Map<Food, List<Lot>> pantry =
                FoodStock.of(book, beforeBook, foods.foods()).lots();
        EquipmentReader.KitchenPage kitchen =
                EquipmentReader.read(sources.find(EquipmentReader.PATH), shop.currency(), problems);
        warnAboutFoodsNotToBeHad(shop, pantry);
        new StrayFiles(sources, problems).check();
        return problems.result(() -> new Kitchen(
                foods.foods(),
                measures.byFood(),
                yields.byFood(),
                shop.packs(),
                dishes,
                pantry,
                shop.currency(),
                cookingDay,
                kitchen.equipment(),
                kitchen.shops(),
                shelves));
    }

    private DishReader dishReader(FoodNames foods, MeasureNames measures, Yields yields) {
        var amounts = new AmountGrammar(measures, problems);
        var mixes = new MixReader(foods, amounts, yields, cooked::putIfAbsent, problems);
        return new DishReader(mixes, amounts, problems);
    }

    private Map<String, Dish> everyday(DishReader reader) {
        var dishes = new LinkedHashMap<String, Dish>();
        int before = problems.errors();
        List<String> pages = pages(DISHES);
        pages.forEach(page -> read(page, reader).ifPresent(dish -> dishes.put(dish.id(), dish)));
        if (pages.isEmpty() && problems.errors() == before) {
            var folder = new SourceFile(sources.shown(DISHES), List.of());
            problems.warning(Span.whole(folder), "there is no dish in this folder", "without one there is no plan");
        }
        return dishes;
    }

    /** A folder in the folder of dishes is a shelf; a name stands once on all of them. */
    private Shelves shelves(DishReader reader, Set<String> everyday) {
        var shelves = new LinkedHashMap<String, List<Dish>>();
        var known = new HashSet<>(everyday);
        for (DataFiles.Entry folder : sources.list(DISHES)) {
            boolean isShelf =
                    folder.isFolder() && !folder.name().endsWith(".yaml"); // a folder of that name is complained about
            List<String> pages = isShelf ? pages(folder.path()) : List.of();
            List<Dish> dishes = new ArrayList<>();
            for (String page : pages) {
                read(page, reader).ifPresent(dish -> {
                    if (known.add(dish.id())) {
                        dishes.add(dish);
                    } else {
                        twice(page, dish);
                    }
                });
            }
            if (!dishes.isEmpty()) {
                shelves.put(folder.name(), dishes);
            }
        }
        return new Shelves(shelves);
    }

    private void twice(String page, Dish dish) {
        problems.error(
                Span.whole(new SourceFile(sources.shown(page), List.of())),
                "there is a dish called \"" + dish.id() + "\" on another shelf",
                "expected another name: a dish is called the same on no two shelves");
    }

    private List<String> pages(String folder) {
        return sources.list(folder).stream()
                .map(DataFiles.Entry::path)
                .filter(path -> path.endsWith(".yaml"))
                .toList();
    }

    private Optional<Dish> read(String page, DishReader reader) {
        return sources.need(page, "expected the dish that was here a moment ago")
                .flatMap(reader::read);
    }

    /** Reported once for each food, where a dish first uses it, and only when the whole shop table was read. */
    private void warnAboutFoodsNotToBeHad(ShopTable shop, Map<Food, List<Lot>> pantry) {
        if (!shop.isComplete()) {
            return;
        }
        cooked.forEach((food, place) -> {
            boolean atHome = pantry.getOrDefault(food, List.of()).stream().anyMatch(lot -> lot.keepsUntil(cookingDay));
            if (!shop.packs().containsKey(food) && !atHome) {
                problems.warning(
                        place,
                        "%s is neither sold nor at home, so this dish cannot be cooked".formatted(food),
                        "add a line for it to foods/shop.csv or profiles/pantry.csv");
            }
        });
    }
}
