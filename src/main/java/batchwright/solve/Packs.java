package batchwright.solve;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.MipModel;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.Map;

/** The columns for packs, with the most of each that could ever be used. */
final class Packs {
    private Packs() {}

    static Map<Pack, Column> columns(PlanRequest request, Menu menu, MipModel model, int rank) {
        Map<Pack, Column> columns = new LinkedHashMap<>();
        Map<Food, Integer> number = new LinkedHashMap<>();
        for (Pack pack : menu.packs()) {
            int nth = number.merge(pack.food(), 1, Integer::sum);
            String name = "buy." + pack.food().id() + "." + nth;
            double most = Math.ceil(
                    mostUsed(request, menu, pack.food()) / pack.grams().doubleValue());
            columns.put(pack, model.column(name, 0, most, true, rank));
        }
        return columns;
    }

    /** A column for each shop on the menu, where trips cost anything. */
    static Map<String, Column> shops(PlanRequest request, Menu menu, MipModel model, int rank) {
        Map<String, Column> columns = new LinkedHashMap<>();
        if (request.kitchen().shops().tripsCost()) {
            menu.packs().stream()
                    .map(Pack::shop)
                    .distinct()
                    .forEach(shop -> columns.put(shop, model.column("trip." + (columns.size() + 1), 0, 1, true, rank)));
        }
        return columns;
    }

    /** Grams as purchased beyond what any plan could use: every container full of it, every snack. */
    private static double mostUsed(PlanRequest request, Menu menu, Food food) {
        double edible = 0;
        for (Seat seat : request.seats()) {
            var wishes = seat.eater().wishes();
            double inOne = menu.dishes(seat).stream()
                    .flatMapToDouble(d -> d.parts().stream()
                            .mapToDouble(p -> p.mostGrams()
                                    * menu.mostShare(d, p, food)
                                    * request.kitchen().shops().atHand(p).doubleValue()))
                    .sum();
            double aDay = inOne * wishes.containersADay();
            aDay += menu.snacks(seat).stream()
                    .filter(m -> m.food().equals(food))
                    .mapToDouble(m -> m.grams().doubleValue() * wishes.snackMeasuresADay())
                    .sum();
            aDay += wishes.always().stream()
                    .filter(a -> a.measure().food().equals(food))
                    .mapToDouble(a -> a.count() * a.measure().grams().doubleValue())
                    .sum();
            edible += aDay * request.days();
        }
        return edible / food.edibleShare().doubleValue();
    }
}
