package batchwright.files;

import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Pack;
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
import java.util.regex.Pattern;

/**
 * foods/shop.csv: packs with price, all in one currency. A line with a step is of loose goods: grams and price are those that
 * the shelf states, and any whole number of steps can be bought.
 */
final class ShopTable {
    private static final int MOST_LINES = 50_000;
    static final List<String> COLUMNS = List.of("food", "shop", "pack", "grams", "price", "currency", "seen", "note");
    static final List<String> OPTIONAL = List.of("drained", "step");
    private static final Range STEP = Range.of(
            "step", "10", "5000", "g", "the price of a step is rounded up to the cent, so tiny steps would be dear");
    private static final Range PRICE =
            Range.of("price", "0.01", "10000", "", "what is free at home belongs in the pantry");
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
    /** Such as $2.49, 2.49 USD, 2,49 \u20ac. */
    private static final Pattern WITH_CURRENCY =
            Pattern.compile("[\\p{Sc}\\p{L}]+\\.?\\s*[0-9.,]+|[0-9.,]+\\s*[\\p{Sc}\\p{L}]+\\.?");

    private static final int MINOR_DIGITS = 2;

    private final FoodNames foods;
    private final Problems problems;
    private final Once once;
    private final PriceNeighbours neighbours;
    private final Map<Food, List<Pack>> packs = new LinkedHashMap<>();
    private Optional<Written> currency = Optional.empty();
    private boolean complete = true;

    private ShopTable(FoodNames foods, Problems problems) {
        this.foods = foods;
        this.problems = problems;
        this.once = new Once(problems);
        this.neighbours = new PriceNeighbours(problems);
    }

    static ShopTable read(Optional<SourceFile> file, FoodNames foods, Problems problems) {
        var table = new ShopTable(foods, problems);
        int before = problems.errors();
        Optional<List<Row>> rows = file.flatMap(f -> CsvTable.rows(f, MOST_LINES, COLUMNS, OPTIONAL, problems));
        rows.ifPresent(all -> all.forEach(table::row));
        table.neighbours.check();
        table.complete = rows.isPresent() && problems.errors() == before;
        return table;
    }

    Map<Food, List<Pack>> packs() {
        return packs;
    }

    /** ISO 4217 code of all prices; US dollars when nothing is sold. */
    String currency() {
        return currency.map(Written::text).orElse("USD");
    }

    /** Whether every row was read, so that a food without a pack is truly not sold. */
    boolean isComplete() {
        return complete;
    }

    private void row(Row row) {
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
        Optional<Money> price = price(row);
        row.need("currency", "Enter a currency such as USD").ifPresent(this::sameCurrency);
        Optional<LocalDate> seen =
                row.need("seen", "Enter the day you saw the price: 2026-10-15").flatMap(new Dates(problems)::read);
        if (food.isPresent() && contents.isPresent() && price.isPresent()) {
            neighbours.add(food.get(), contents.get().grams(), price.get(), row);
        }
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
    private Optional<BigDecimal> step(Row row, Optional<Contents> contents) {
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

    private Optional<Money> price(Row row) {
        Written cell = row.cell("price");
        if (WITH_CURRENCY.matcher(cell.text()).matches()) {
            problems.error(
                    cell,
                    cell.quoted() + " is more than a number",
                    "expected the digits alone, such as 2.49: the currency has its own column");
            return Optional.empty();
        }
        Optional<BigDecimal> price = row.decimal("price", PRICE);
        if (price.isPresent() && price.get().stripTrailingZeros().scale() > MINOR_DIGITS) {
            problems.error(row.cell("price"), "the price has more than two decimals", "expected a price such as 2.49");
            return Optional.empty();
        }
        return price.map(Money::of);
    }

    private void sameCurrency(Written code) {
        if (!CURRENCY.matcher(code.text()).matches()) {
            problems.error(code, code.quoted() + " is not a currency", "expected its three letters: USD, EUR");
        } else if (currency.isEmpty()) {
            currency = Optional.of(code);
        } else if (!currency.get().text().equals(code.text())) {
            problems.error(
                    code,
                    "the price is in %s, others are in %s"
                            .formatted(code.text(), currency.get().text()),
                    "expected one currency; the first is on line %s"
                            .formatted(currency.get().at().line()));
        }
    }
}
