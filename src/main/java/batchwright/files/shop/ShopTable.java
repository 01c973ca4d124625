package batchwright.files.shop;

import batchwright.files.foods.FoodNames;
import batchwright.files.table.CsvTable;
import batchwright.files.table.TableRow;
import batchwright.files.value.DateGrammar;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.files.value.Weights;
import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * foods/shop.csv: packs with price, all in one currency. A line with a step is of loose goods: grams and price are those that
 * the shelf states, and any whole number of steps can be bought.
 */
public final class ShopTable {
    private static final int MOST_LINES = 50_000;
    static final List<String> COLUMNS = List.of("food", "shop", "pack", "grams", "price", "currency", "seen", "note");
    static final List<String> OPTIONAL = List.of("drained", "step", "still_on");
    private static final NumberRange STEP = NumberRange.of(
            "step", "10", "5000", "g", "the price of a step is rounded up to the cent, so tiny steps would be dear");

    private final FoodNames foods;
    private final Problems problems;
    private final Once once;
    private final ShopPrices prices;
    private final PriceNeighbours neighbours;
    private final Map<Food, List<Pack>> packs = new LinkedHashMap<>();
    private boolean complete = true;

    private ShopTable(FoodNames foods, Problems problems) {
        this.foods = foods;
        this.problems = problems;
        this.once = new Once(problems);
        this.prices = new ShopPrices(problems);
        this.neighbours = new PriceNeighbours(problems);
    }

    public static ShopTable read(Optional<SourceFile> file, FoodNames foods, Problems problems) {
        var table = new ShopTable(foods, problems);
        int before = problems.errors();
        Optional<List<TableRow>> rows = file.flatMap(f -> CsvTable.rows(f, MOST_LINES, COLUMNS, OPTIONAL, problems));
        rows.ifPresent(all -> all.forEach(table::row));
        table.neighbours.check(table.currency());
        table.complete = rows.isPresent() && problems.errors() == before;
        return table;
    }

    public Map<Food, List<Pack>> packs() {
        return packs;
    }

    /** Of all prices; US dollars when nothing is sold. */
    public Currency currency() {
        return prices.currency();
    }

    /** Whether every row was read, so that a food without a pack is truly not sold. */
    public boolean isComplete() {
        return complete;
    }

    private void row(TableRow row) {
        if (!row.isSound()) {
            row.sure("food").ifPresent(foods::find);
            return;
        }
        int before = problems.errors();
        Optional<Food> food = row.need("food", "Enter a food of the catalogue").flatMap(foods::find);
        Optional<Written> shop = row.need("shop", "Enter the name of the shop");
        Optional<Written> label = row.need("pack", "Enter what the shelf says: bag, can, dozen");
        Optional<Contents> contents = row.need("grams", "Enter the weight of a pack, in g")
                .flatMap(grams -> new ContentsGrammar(problems).read(grams, row.cell("drained")));
        Optional<BigDecimal> step = step(row, contents);
        Optional<Money> price = prices.read(row);
        Optional<LocalDate> seen = row.need("seen", "Enter the day you saw the price: 2026-10-15")
                .flatMap(new DateGrammar(problems)::read);
        if (food.isPresent() && contents.isPresent() && price.isPresent()) {
            neighbours.add(food.get(), contents.get().grams(), price.get(), row);
        }
        food.ifPresent(f -> new PackRefuse(f, problems).check(row.cell("still_on"), row.cell("pack")));
        if (problems.errors() == before && food.isPresent()) {
            String where = shop.orElseThrow().text();
            String says = label.orElseThrow().text();
            once.isNew("%s of %s in %s".formatted(says, food.get(), where), row.cell("pack"));
            var pack = new Pack(
                    food.get(),
                    where,
                    says,
                    contents.orElseThrow(),
                    price.orElseThrow(),
                    Optional.empty(),
                    seen.orElseThrow(),
                    row.cell("note").text());
            packs.computeIfAbsent(food.get(), f -> new ArrayList<>())
                    .add(step.map(pack::looseBy).orElse(pack));
        }
    }

    /** Of loose goods; empty for packs. */
    private Optional<BigDecimal> step(TableRow row, Optional<Contents> contents) {
        Written cell = row.cell("step");
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        if (contents.isPresent() && !contents.get().isPlain()) {
            problems.error(
                    cell,
                    "what is sold loose is neither a multipack nor drained",
                    "expected in grams the weight that the price is for, such as 1000, and no drained weight");
        }
        return new Weights(problems).read(cell, STEP, "expected grams such as 100");
    }
}
