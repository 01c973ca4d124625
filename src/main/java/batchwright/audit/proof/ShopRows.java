package batchwright.audit.proof;

import batchwright.audit.proof.CookedWays.Way;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is used, and the room to spare that is asked for, is at home or in packs. Three things follow from that for whole packs, and make
 * the rows say more: a pack counts for no more than can be missing; each user of a food alone needs packs; a dish that the pantry is not
 * enough for needs a pack of each food that is never left out of it.
 */
final class ShopRows {
    private final TotalsOfDishes totals;
    private final ProofModel model;
    private final PlanRequest request;
    private final Kitchen kitchen;
    private final Map<String, List<Integer>> bought = new LinkedHashMap<>();

    /**
     * A dish, or the snacks of an eater.
     *
     * @param takes grams of a food as purchased
     * @param most of them
     */
    private record User(ProofModel.Sum takes, BigDecimal most) {}

    ShopRows(TotalsOfDishes totals) {
        this.totals = totals;
        this.model = totals.model();
        this.request = totals.request();
        this.kitchen = request.kitchen();
    }

    void add() {
        Set<Food> foods = new LinkedHashSet<>();
        for (Way way : totals.ways().all()) {
            way.dish().parts().forEach(part -> part.mix().forEach(i -> foods.add(i.food())));
        }
        for (Seat seat : request.seats()) {
            totals.snacks(seat).forEach(measure -> foods.add(measure.food()));
            seat.eater()
                    .wishes()
                    .always()
                    .forEach(always -> foods.add(always.measure().food()));
        }
        foods.forEach(this::add);
        trips();
    }

    private void add(Food food) {
        List<User> users = new ArrayList<>();
        for (String dish : totals.ways().dishes()) {
            ProofModel.Sum inDish = model.new Sum();
            BigDecimal mostInDish = BigDecimal.ZERO;
            for (Way way : totals.ways().of(dish)) {
                ProofModel.Sum use = inWay(way, food);
                inDish.plus(use, 1);
                mostInDish = mostInDish.max(use.most());
            }
            if (!inDish.isEmpty()) {
                users.add(new User(inDish, mostInDish));
            }
        }
        ProofModel.Sum besides = model.new Sum();
        for (Seat seat : request.seats()) {
            ProofModel.Sum mine = asSnack(seat, food);
            if (!mine.isEmpty()) {
                users.add(new User(mine, mine.most()));
                besides.plus(mine, 1);
            }
        }
        ProofModel.Sum all = model.new Sum();
        users.forEach(user -> all.plus(user.takes(), 1));
        BigDecimal always = always(food);
        BigDecimal mostOfAll = users.stream().map(User::most).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal most = always.add(mostOfAll.min(mostInContainers(food).add(besides.most())));
        buy(food, most);
        BigDecimal home = kitchen.pantryGrams(food);
        BigDecimal lasting = kitchen.pantryGrams(food, request.lastDay());
        cover("stock." + food.id(), food, all, always, most, home);
        if (users.size() > 1) {
            for (int u = 0; u < users.size(); u++) {
                cover(
                        "stock." + food.id() + "." + (u + 1),
                        food,
                        users.get(u).takes(),
                        BigDecimal.ZERO,
                        users.get(u).most(),
                        home);
            }
        }
        if (lasting.compareTo(home) < 0) {
            cover("use_by." + food.id(), food, besides, always, always.add(besides.most()), lasting);
        }
        totals.ways().dishes().forEach(dish -> onePack(dish, food, home));
    }

    /** Grams as purchased that are to be at hand for all containers of a dish. */
    private ProofModel.Sum inWay(Way way, Food food) {
        ProofModel.Sum sum = model.new Sum();
        for (Seat seat : request.seats()) {
            if (totals.containersOf(way, seat) >= 0) {
                for (Part part : way.dish().parts()) {
                    sum.plus(totals.gramsOf(part, way, seat), atHand(part, food));
                }
            }
        }
        return sum;
    }

    /** For a gram of a part; what is counted in pieces has no room to spare. */
    private BigDecimal atHand(Part part, Food food) {
        if (part.mix().stream().map(Ingredient::food).noneMatch(food::equals)) {
            return BigDecimal.ZERO;
        }
        BigDecimal used = PerGram.ofFood(part, food);
        return part.pieces() ? used : used.add(used.multiply(kitchen.shops().reserve()));
    }

    private ProofModel.Sum asSnack(Seat seat, Food food) {
        ProofModel.Sum sum = model.new Sum();
        for (Measure measure : totals.snacks(seat)) {
            if (measure.food().equals(food)) {
                sum.plus(totals.snackOf(measure, seat), PerGram.asPurchased(food, measure.grams()));
            }
        }
        return sum;
    }

    private BigDecimal always(Food food) {
        BigDecimal edible = BigDecimal.ZERO;
        for (Seat seat : request.seats()) {
            for (Wishes.Always always : seat.eater().wishes().always()) {
                if (always.measure().food().equals(food)) {
                    edible = edible.add(always.measure().grams().multiply(BigDecimal.valueOf(always.count())));
                }
            }
        }
        return PerGram.asPurchased(food, edible.multiply(BigDecimal.valueOf(request.days())));
    }

    /** As if each container held the dish that takes most of the food. */
    private BigDecimal mostInContainers(Food food) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Seat seat : request.seats()) {
            BigDecimal inOne = BigDecimal.ZERO;
            for (Way way : totals.ways().of(seat)) {
                BigDecimal here = BigDecimal.ZERO;
                for (Part part : way.dish().parts()) {
                    here = here.add(atHand(part, food).multiply(BigDecimal.valueOf(part.mostGrams())));
                }
                inOne = inOne.max(here);
            }
            long containers = (long) seat.eater().wishes().containersADay() * request.days();
            sum = sum.add(inOne.multiply(BigDecimal.valueOf(containers)));
        }
        return sum;
    }

    /** Columns for the packs of a food. More than are needed for the most of it are never bought: one could stay in the shop. */
    private void buy(Food food, BigDecimal most) {
        int number = 0;
        for (Pack pack : kitchen.packsOf(food)) {
            number++;
            long packs = most.divide(pack.grams(), 0, RoundingMode.CEILING).longValueExact();
            String name = "buy." + food.id() + "." + number;
            int column = model.column(name, 0, packs, true, pack.price().minor());
            bought.computeIfAbsent(pack.shop(), shop -> new ArrayList<>()).add(column);
        }
    }

    private List<Integer> packs(Food food) {
        List<Integer> columns = new ArrayList<>();
        for (int k = 1; k <= kitchen.packsOf(food).size(); k++) {
            columns.add(model.column("buy." + food.id() + "." + k));
        }
        return columns;
    }

    private void cover(
            String name, Food food, ProofModel.Sum used, BigDecimal besides, BigDecimal most, BigDecimal home) {
        BigDecimal missing = most.subtract(home);
        if (missing.signum() <= 0) {
            return;
        }
        ProofModel.Sum row = model.new Sum();
        List<Integer> columns = packs(food);
        for (int k = 0; k < columns.size(); k++) {
            row.plus(columns.get(k), kitchen.packsOf(food).get(k).grams().min(missing));
        }
        row.plus(used, -1).atLeast(name, besides.subtract(home).subtract(TotalsOfDishes.TOLERANCE));
    }

    /** A batch, in whichever way it is cooked, if that way takes more of the food than is at home. */
    private void onePack(String dish, Food food, BigDecimal home) {
        ProofModel.Sum row = model.new Sum();
        packs(food).forEach(column -> row.plus(column, 1));
        boolean needs = false;
        for (Way way : totals.ways().of(dish)) {
            if (least(way, food).compareTo(home.add(TotalsOfDishes.TOLERANCE)) > 0) {
                row.plus(totals.cookedAs(way), -1);
                needs = true;
            }
        }
        if (needs) {
            row.atLeast("pack." + dish + "." + food.id(), 0);
        }
    }

    /** In the smallest batch. */
    private BigDecimal least(Way way, Food food) {
        BigDecimal least = BigDecimal.ZERO;
        for (Part part : way.dish().parts()) {
            if (!part.optional()) {
                least = least.add(atHand(part, food).multiply(BigDecimal.valueOf(part.leastGrams())));
            }
        }
        return least.multiply(BigDecimal.valueOf(PlanRequest.LEAST_CONTAINERS_OF_A_DISH));
    }

    /** Packs are bought in shops that are gone to. */
    private void trips() {
        if (!kitchen.shops().tripsCost()) {
            return;
        }
        int number = 0;
        for (List<Integer> columns : bought.values()) {
            number++;
            int trip = model.column(
                    "trip." + number, 0, 1, true, kitchen.shops().trip().minor());
            for (int column : columns) {
                ProofModel.Variable packs = model.columns().get(column);
                model.new Sum().plus(column, 1).plus(trip, -packs.most()).atMost("trip." + packs.name(), 0);
            }
        }
    }
}
