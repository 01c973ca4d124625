package batchwright.files.shop;

import batchwright.files.disk.DataFiles;
import batchwright.food.Kitchen;
import batchwright.food.Pack;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Prices that were seen too long before the cooking day, or after it. One warning for each, whatever their number. */
public final class PriceDates {
    private static final String SHOP = "foods/shop.csv";
    private static final int NAMED = 5;

    private PriceDates() {}

    public static List<Problem> warnings(DataFiles files, Kitchen kitchen) {
        LocalDate day = kitchen.cookingDay();
        List<Problem> warnings = new ArrayList<>();
        warn(
                files,
                packs(kitchen, pack -> pack.isStaleOn(day), Comparator.comparing(Pack::seen)),
                "seen more than " + Pack.STALE_AFTER_DAYS + " days before " + day,
                "the oldest",
                "look at them again, and write the new price and the day into the line",
                warnings);
        warn(
                files,
                packs(
                        kitchen,
                        pack -> pack.seen().isAfter(day),
                        Comparator.comparing(Pack::seen).reversed()),
                "seen after " + day,
                "the latest",
                "expected a day that is not after the cooking day",
                warnings);
        return warnings;
    }

    private static List<Pack> packs(Kitchen kitchen, Predicate<Pack> which, Comparator<Pack> order) {
        return kitchen.packs().values().stream()
                .flatMap(List::stream)
                .filter(which)
                .sorted(order)
                .toList();
    }

    private static void warn(
            DataFiles files, List<Pack> packs, String wrong, String first, String cure, List<Problem> warnings) {
        if (packs.isEmpty()) {
            return;
        }
        String named = packs.stream()
                .limit(NAMED)
                .map(p -> p.food().id() + " " + p.seen())
                .collect(Collectors.joining(", "));
        String which = packs.size() > NAMED ? "; " + first + ": " + named : ": " + named;
        warnings.add(Problem.warning(
                Span.whole(new SourceFile(files.shown(SHOP), List.of())),
                (packs.size() == 1 ? "1 price was " : packs.size() + " prices were ") + wrong + which,
                cure));
    }
}
