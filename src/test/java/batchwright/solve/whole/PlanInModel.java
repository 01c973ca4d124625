package batchwright.solve.whole;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.plan.Portion;
import batchwright.plan.Purchase;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.Snack;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.MipModel;
import batchwright.solve.rule.Menu;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A plan as values of the columns of the whole model, by the names in its table. */
final class PlanInModel {
    private final Map<String, Double> values = new HashMap<>();
    private final Map<Food, List<Pack>> packs;

    private PlanInModel(Map<Food, List<Pack>> packs) {
        this.packs = packs;
    }

    /** Columns that the plan does not speak of are 0. */
    static double[] values(Plan plan, Map<Food, List<Pack>> packs, MipModel model) {
        var in = new PlanInModel(packs);
        plan.batches().forEach(in::batch);
        plan.eaters().forEach(eater -> in.days(plan.first(), eater));
        plan.shopping().forEach(in::buy);
        List<String> shops = new Menu(plan.first().request())
                .packs().stream().map(Pack::shop).distinct().toList();
        plan.first().shopsVisited().forEach(shop -> in.values.put("trip." + (shops.indexOf(shop) + 1), 1.0));
        plan.batches().forEach(batch -> in.swaps(plan.first(), batch));
        double[] x = new double[model.columns().size()];
        for (Column column : model.columns()) {
            x[column.index()] = in.values.getOrDefault(column.name(), 0.0);
        }
        return x;
    }

    private void batch(Batch batch) {
        String dish = batch.dish().id();
        values.put("cook." + dish, 1.0);
        for (Fill fill : batch.fills()) {
            String who = dish + "." + fill.eater().orElseThrow().id();
            values.put("gets." + who, 1.0);
            for (Portion portion : fill.portions()) {
                values.put("steps." + portion.part().name() + "." + who, steps(portion));
                values.put("keep." + portion.part().name() + "." + who, portion.rawGrams() > 0 ? 1.0 : 0);
            }
        }
    }

    private void swaps(Session session, Batch batch) {
        Dish written = Objects.requireNonNull(
                session.kitchen().dishes().get(batch.dish().id()));
        List<Variant> variants = new Menu(session.request()).variants(written);
        variants.stream()
                .filter(variant -> variant.swaps().equals(batch.dish().swaps()))
                .findFirst()
                .ifPresent(cooked -> swaps(session, batch, written, variants, cooked));
    }

    private void swaps(Session session, Batch batch, Dish written, List<Variant> variants, Variant cooked) {
        values.put("swap." + written.id() + "." + (variants.indexOf(cooked) + 1), 1.0);
        for (Part part : written.parts()) {
            List<Variant> changing =
                    variants.stream().filter(v -> v.changes(part)).toList();
            int number = changing.indexOf(cooked) + 1;
            for (Fill fill : batch.fills()) {
                String row = part.name() + "." + written.id() + "."
                        + fill.eater().orElseThrow().id();
                double steps = values.getOrDefault("steps." + row, 0.0);
                values.put("swapped." + row + "." + number, steps);
                for (EaterDays eater : session.eaters()) {
                    if (eater.seat().eater().equals(fill.eater().orElseThrow())) {
                        eater.days()
                                .forEach(day -> day.servings().stream()
                                        .filter(serving -> serving.dish().equals(written))
                                        .forEach(serving -> values.put(
                                                "swapped_on." + row + ".day" + day.day() + "." + number,
                                                steps * part.stepGrams() * serving.count())));
                    }
                }
            }
        }
    }

    private static double steps(Portion portion) {
        return (double) portion.rawGrams() / portion.part().stepGrams();
    }

    private void days(Session session, EaterDays eater) {
        String id = eater.seat().eater().id();
        for (Day day : eater.days()) {
            for (Serving serving : day.servings()) {
                Fill fill = session.fill(serving.dish(), eater.seat().eater());
                for (int nth = 1; nth <= serving.count(); nth++) {
                    String place = serving.dish().id() + "." + id + ".day" + day.day() + "." + nth;
                    values.put("served." + place, 1.0);
                    fill.portions().forEach(p -> values.put("part." + p.part().name() + "." + place, steps(p)));
                }
            }
            for (Snack snack : day.snacks()) {
                String name =
                        snack.measure().food().id() + "." + snack.measure().name() + "." + id + ".day" + day.day();
                values.put("snack." + name, (double) snack.count());
                values.put("snack_kind." + name, 1.0);
                values.put("snack_alike." + name, 1.0);
            }
        }
    }

    private void buy(Purchase purchase) {
        List<Pack> sold = packs.getOrDefault(purchase.food(), List.of());
        purchase.packs().keySet().stream()
                .filter(Pack::isLoose)
                .forEach(pack -> values.put("loose." + purchase.food().id(), 1.0));
        purchase.packs()
                .forEach((pack, count) ->
                        values.put("buy." + purchase.food().id() + "." + (sold.indexOf(pack) + 1), (double) count));
    }
}
