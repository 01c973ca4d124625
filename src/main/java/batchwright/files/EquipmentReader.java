package batchwright.files;

import batchwright.files.page.Fields;
import batchwright.files.page.YamlPage;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.food.Appliance;
import batchwright.food.Equipment;
import batchwright.food.Shops;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * foods/kitchen.yaml: what the kitchen cooks with, what the way to a shop costs, and how much room to spare there is to be. What it leaves out is as in a usual kitchen; without
 * it, all is.
 */
final class EquipmentReader {
    static final String PATH = "foods/kitchen.yaml";
    /** Litres of those that are usual: common practice. */
    private static final Map<Appliance, BigDecimal> OTHERS = new EnumMap<>(Map.of(
            Appliance.SLOW_COOKER, new BigDecimal("4.7"),
            Appliance.RICE_COOKER, new BigDecimal("1.8"),
            Appliance.PRESSURE_COOKER, new BigDecimal("6"),
            Appliance.AIR_FRYER, new BigDecimal("5"),
            Appliance.MICROWAVE, new BigDecimal("20")));

    private static final List<String> OWN_KEYS = List.of(
            "burners",
            "burner_kw",
            "ovens",
            "shelves",
            "pots",
            "pans",
            "cooks",
            "most_minutes",
            "done_within",
            "largest_box_ml",
            "largest_box_g",
            "trip",
            "reserve");
    private static final List<String> KEYS = Stream.concat(
                    OWN_KEYS.stream(), OTHERS.keySet().stream().map(Appliance::id))
            .toList();
    private static final NumberRange BURNERS = NumberRange.of("number of burners", "0", "12", "", "");
    private static final NumberRange KILOWATTS = NumberRange.of(
            "power", "0.2", "5", "kW", "what reaches the pot: a small gas flame 0.4, a large one 1.2, induction 1.6");
    private static final NumberRange OVENS = NumberRange.of("number of ovens", "0", "4", "", "");
    private static final NumberRange SHELVES =
            NumberRange.of("number of shelves", "1", "6", "", "trays that brown at once");
    private static final NumberRange LITRES = NumberRange.of("volume", "0.5", "100", "litres", "");
    private static final NumberRange COOKS = NumberRange.of("number of cooks", "1", "6", "", "");
    private static final NumberRange MINUTES = NumberRange.of("time", "10", "1440", "minutes", "");
    private static final NumberRange MILLILITRES = NumberRange.of("largest box", "100", "5000", "ml", "");
    private static final NumberRange GRAMS = NumberRange.of("largest box", "100", "5000", "g", "");

    private static final NumberRange TRIP =
            NumberRange.of("price of a trip", "0", "1000000", "", "what the way to a shop and back costs you");

    private static final NumberRange RESERVE =
            NumberRange.of("reserve", "0", "50", "%", "room to spare of what is weighed");

    private final Fields fields;
    private final Problems problems;

    private EquipmentReader(Fields fields, Problems problems) {
        this.fields = fields;
        this.problems = problems;
    }

    /**
     * What the file says.
     *
     * @param shops price of a trip to one, and room to spare
     */
    record KitchenPage(Equipment equipment, Shops shops) {}

    /** @param currency of all prices */
    static KitchenPage read(Optional<SourceFile> file, Currency currency, Problems problems) {
        return file.filter(f -> f.lines().stream().anyMatch(EquipmentReader::says))
                .flatMap(f -> YamlPage.read(f, problems))
                .map(page -> new EquipmentReader(Fields.ofPage(page, KEYS, problems), problems))
                .map(reader -> new KitchenPage(
                        reader.equipment(), new Shops(reader.trip(currency), Map.of(), reader.reserve())))
                .orElse(new KitchenPage(Equipment.USUAL, Shops.FREE));
    }

    /** As a share. */
    private BigDecimal reserve() {
        return fields.text("reserve")
                .flatMap(w -> new Numbers(problems)
                        .decimal(new Written(w.text().replaceFirst("\\s*%$", ""), w.at()), RESERVE))
                .map(percent -> percent.movePointLeft(2))
                .orElse(BigDecimal.ZERO);
    }

    private Money trip(Currency currency) {
        Optional<Written> written = fields.text("trip");
        Optional<BigDecimal> price = written.flatMap(w -> new Numbers(problems).decimal(w, TRIP));
        Optional<Money> trip = price.flatMap(currency::money);
        if (price.isPresent() && trip.isEmpty()) {
            problems.error(
                    written.orElseThrow(),
                    "%s has more decimals than %s"
                            .formatted(written.orElseThrow().text(), currency),
                    "expected an amount in %s, the currency of foods/shop.csv".formatted(currency));
        }
        return trip.orElse(Money.ZERO);
    }

    /** Whether a line is more than a comment: a page of comments says nothing. */
    private static boolean says(String line) {
        return !line.isBlank() && !line.strip().startsWith("#");
    }

    private Equipment equipment() {
        Equipment usual = Equipment.USUAL;
        int burners = fields.whole("burners", BURNERS).orElse(usual.hob().burners());
        double kilowatts = fields.text("burner_kw")
                .flatMap(w -> new Numbers(problems).decimal(w, KILOWATTS))
                .map(BigDecimal::doubleValue)
                .orElse(usual.hob().kilowatts());
        int ovens = fields.whole("ovens", OVENS).orElse(1);
        int shelves = fields.whole("shelves", SHELVES).orElse(usual.oven().shelves());
        var oven = new Equipment.Oven(
                ovens * shelves, usual.oven().heatingMinutes(), usual.oven().toleranceCelsius());
        return new Equipment(
                new Equipment.Hob(burners, kilowatts),
                oven,
                vessels("pots", usual.pots()),
                vessels("pans", usual.pans()),
                others(),
                fields.whole("cooks", COOKS).orElse(1),
                new Equipment.Limits(
                        number("most_minutes", MINUTES),
                        number("done_within", MINUTES),
                        number("largest_box_ml", MILLILITRES),
                        number("largest_box_g", GRAMS)));
    }

    private OptionalInt number(String key, NumberRange range) {
        return fields.whole(key, range).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private List<BigDecimal> vessels(String key, List<BigDecimal> usual) {
        if (!fields.has(key)) {
            return usual;
        }
        List<BigDecimal> litres = new ArrayList<>();
        fields.texts(key, "[5.4, 3] with the litres of each")
                .forEach(w -> new Numbers(problems).decimal(w, LITRES).ifPresent(litres::add));
        return litres;
    }

    /** Beside the name of each: its litres; yes for the usual ones; no is the same as leaving out the line. */
    private Map<Appliance, BigDecimal> others() {
        Map<Appliance, BigDecimal> litres = new EnumMap<>(Appliance.class);
        OTHERS.forEach((appliance, usual) -> fields.text(appliance.id())
                .filter(w -> !w.text().equals("no"))
                .flatMap(w -> w.text().equals("yes") ? Optional.of(usual) : litres(w))
                .ifPresent(l -> litres.put(appliance, l)));
        return litres;
    }

    private Optional<BigDecimal> litres(Written written) {
        return new Numbers(problems).decimal(written, LITRES);
    }
}
