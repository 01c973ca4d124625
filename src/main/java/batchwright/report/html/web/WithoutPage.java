package batchwright.report.html.web;

import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.KeptPurchase;
import batchwright.book.KeptSession;
import batchwright.book.ShoppingSoFar;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.quantity.Money;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What becomes of a plan without a food that is not there: before and after, and whether to keep it.
 *
 * @param working whether it is still being worked out
 * @param says what came of it
 * @param changes what is cooked and what is still to be bought, before and after
 * @param mayKeep whether there is a plan to keep
 */
public record WithoutPage(Frame frame, boolean working, List<String> says, List<Table> changes, boolean mayKeep) {
    public WithoutPage {
        says = List.copyOf(says);
        changes = List.copyOf(changes);
    }

    public static WithoutPage working(Frame frame) {
        return new WithoutPage(
                frame,
                true,
                List.of("Working out the plan without it. What is in the basket counts."),
                List.of(),
                false);
    }

    public static WithoutPage none(Frame frame, String why) {
        return new WithoutPage(frame, false, List.of(why), List.of(), false);
    }

    /**
     * @param proven whether no plan without the food costs less
     * @param after from the same session on
     */
    public static WithoutPage of(
            Frame frame, KeptSession session, ShoppingSoFar soFar, KeptPlan after, boolean proven, Kitchen kitchen) {
        long before = soFar.lines().stream()
                .filter(line -> line.planned().day() >= session.day() && !line.isTaken())
                .mapToLong(line -> line.planned().costMinor())
                .sum();
        long now = after.shopping().stream().mapToLong(KeptPurchase::costMinor).sum();
        return new WithoutPage(
                frame,
                false,
                List.of("Still to pay: %s; with the plan so far %s.%s"
                        .formatted(
                                Show.money(new Money(now), kitchen.currency()),
                                Show.money(new Money(before), kitchen.currency()),
                                proven ? "" : " There may be a cheaper plan: the search ended before the proof.")),
                List.of(cooked(session, after, kitchen), bought(session, soFar, after, kitchen)),
                true);
    }

    private static Table cooked(KeptSession session, KeptPlan after, Kitchen kitchen) {
        Map<String, Integer> before =
                containers(session.plan().batches().stream().filter(batch -> batch.day() >= session.day()));
        Map<String, Integer> now = containers(after.batches().stream());
        var table = new Table("Cook").words("dish").numbers("containers before").numbers("now");
        names(before, now)
                .forEach(dish -> table.row(
                        kitchen.dish(dish).map(Dish::name).orElse(dish),
                        Integer.toString(before.getOrDefault(dish, 0)),
                        Integer.toString(now.getOrDefault(dish, 0))));
        return table;
    }

    private static Map<String, Integer> containers(Stream<KeptBatch> batches) {
        return batches.collect(Collectors.groupingBy(
                KeptBatch::dish,
                TreeMap::new,
                Collectors.summingInt(batch ->
                        batch.fills().stream().mapToInt(KeptFill::containers).sum())));
    }

    /** Only what differs. */
    private static Table bought(KeptSession session, ShoppingSoFar soFar, KeptPlan after, Kitchen kitchen) {
        Map<String, String> before = packs(soFar.lines().stream()
                .filter(line -> line.planned().day() >= session.day() && !line.isTaken())
                .map(ShoppingSoFar.Line::planned));
        Map<String, String> now = packs(after.shopping().stream());
        Set<String> differ = names(before, now);
        differ.removeIf(food -> before.getOrDefault(food, "").equals(now.getOrDefault(food, "")));
        var table = new Table("Still to buy, where it differs")
                .words("food")
                .numbers("before")
                .numbers("now");
        differ.forEach(food -> table.row(
                Optional.ofNullable(kitchen.foods().get(food)).map(Food::name).orElse(food),
                before.getOrDefault(food, "–"),
                now.getOrDefault(food, "–")));
        return table;
    }

    private static Map<String, String> packs(Stream<KeptPurchase> lines) {
        return lines.collect(Collectors.toMap(
                KeptPurchase::food,
                line -> line.packs() + " × " + Show.plainText(line.grams(), 1) + " g",
                (one, other) -> one + ", " + other,
                TreeMap::new));
    }

    private static Set<String> names(Map<String, ?> before, Map<String, ?> now) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(now.keySet());
        return names;
    }
}
