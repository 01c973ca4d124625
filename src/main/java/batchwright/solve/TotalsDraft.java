package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import batchwright.solve.rule.Draft;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan as totals over all days: containers by dish and eater, grams of each part in all of them together, snacks, packs. The
 * day rules hold on the average, and grams need not be multiples of the scale's step, so that its optimum is a lower bound
 * for every plan laid out day by day.
 */
final class TotalsDraft implements Draft {
    private final PlanRequest request;
    private final Menu menu;
    private final MipModel model = new MipModel();
    private final Map<Dish, Column> cooked = new LinkedHashMap<>();
    private final Map<Seat, Map<Dish, Column>> containers = new LinkedHashMap<>();
    private final Map<Key, Column> grams = new LinkedHashMap<>();
    private final Map<Key, Column> kept = new LinkedHashMap<>();
    private final Map<SnackKey, Column> snacks = new LinkedHashMap<>();
    private final Packs packs;

    private record Key(Seat seat, Dish dish, String part) {}

    private record SnackKey(Seat seat, Measure measure) {}

    private final int rank;

    /** What is decided by branching on the model, and what is left to a later step. */
    private enum Decides {
        DISHES,
        EVERY_DAY_ALIKE,
        EVERYTHING
    }

    private final Decides decides;

    /** To choose dishes: only whether a dish is cooked is decided by branching on this model. */
    static TotalsDraft choosingDishes(PlanRequest request, Menu menu) {
        return new TotalsDraft(request, menu, Decides.DISHES);
    }

    /** With every dish of the menu cooked and the same containers on every day, which is decided by branching. */
    static TotalsDraft everyDayAlike(PlanRequest request, Menu menu) {
        return new TotalsDraft(request, menu, Decides.EVERY_DAY_ALIKE);
    }

    /** With every dish of the menu cooked, and everything decided by branching. */
    static TotalsDraft cookingAll(PlanRequest request, Menu menu) {
        return new TotalsDraft(request, menu, Decides.EVERYTHING);
    }

    private TotalsDraft(PlanRequest request, Menu menu, Decides decides) {
        this.decides = decides;
        this.rank = decides == Decides.EVERYTHING ? 0 : Column.LATER;
        boolean choosing = decides == Decides.DISHES;
        this.request = request;
        this.menu = menu;
        for (Dish dish : menu.dishes()) {
            cooked.put(dish, model.column("cook." + dish.id(), choosing ? 0 : 1, 1, true, 0));
        }
        for (Seat seat : request.seats()) {
            String eater = seat.eater().id();
            Map<Dish, Column> mine = new LinkedHashMap<>();
            containers.put(seat, mine);
            for (Dish dish : menu.dishes(seat)) {
                String at = dish.id() + "." + eater;
                mine.put(dish, fill(seat, dish, at));
                dish.parts().forEach(part -> part(seat, dish, part, at));
            }
            for (Measure measure : menu.snacks(seat)) {
                int most = Math.min(measure.snackMost(), seat.eater().wishes().snackMeasuresADay()) * request.days();
                String name = "snack." + measure.food().id() + "." + measure.name() + "." + eater;
                snacks.put(new SnackKey(seat, measure), model.column(name, 0, most, true, rank));
            }
        }
        packs = new Packs(request, menu, model, rank);
    }

    private Column fill(Seat seat, Dish dish, String at) {
        int most = mostContainers(seat, dish) / containersAColumnStep();
        boolean possible = decides != Decides.EVERY_DAY_ALIKE || dish.keepsUntil(request.days());
        int fillRank = decides == Decides.DISHES ? Column.LATER : 0;
        return model.column("fill." + at, 0, possible ? most : 0, true, fillRank);
    }

    private int containersAColumnStep() {
        return decides == Decides.EVERY_DAY_ALIKE ? request.days() : 1;
    }

    private void part(Seat seat, Dish dish, Part part, String at) {
        var key = new Key(seat, dish, part.name());
        boolean allowed = menu.allows(seat, part);
        double most = allowed ? (double) part.mostGrams() * mostContainers(seat, dish) : 0;
        grams.put(key, model.column("grams." + part.name() + "." + at, 0, most, false, 0));
        if (part.optional()) {
            kept.put(key, model.column("keep." + part.name() + "." + at, 0, allowed ? 1 : 0, true, rank));
        }
    }

    @Override
    public PlanRequest request() {
        return request;
    }

    @Override
    public Menu menu() {
        return menu;
    }

    @Override
    public MipModel model() {
        return model;
    }

    @Override
    public Expression cooked(Dish dish) {
        return Expression.of(get(cooked, dish));
    }

    Column cookedColumn(Dish dish) {
        return get(cooked, dish);
    }

    Column containersColumn(Seat seat, Dish dish) {
        return get(get(containers, seat), dish);
    }

    @Override
    public Expression containers(Seat seat, Dish dish) {
        return new Expression().plus(containersColumn(seat, dish), containersAColumnStep());
    }

    @Override
    public int mostContainers(Seat seat, Dish dish) {
        int days = dish.freezes() ? request.days() : Math.min(request.days(), dish.fridgeDays());
        int aDay =
                Math.min(PlanRequest.MOST_OF_A_DISH_A_DAY, seat.eater().wishes().containersADay());
        return days * aDay;
    }

    @Override
    public Expression grams(Seat seat, Dish dish, Part part) {
        return Expression.of(get(grams, new Key(seat, dish, part.name())));
    }

    @Override
    public Optional<Column> kept(Seat seat, Dish dish, Part part) {
        return Optional.ofNullable(kept.get(new Key(seat, dish, part.name())));
    }

    @Override
    public Expression snacks(Seat seat, Measure measure) {
        return Expression.of(get(snacks, new SnackKey(seat, measure)));
    }

    @Override
    public Column packs(Pack pack) {
        return packs.column(pack);
    }

    @Override
    public List<Span> spans(Seat seat) {
        return List.of(new AllDays(seat));
    }

    private static <K, V> V get(Map<K, V> map, K key) {
        return Lookup.get(map, key);
    }

    /** All days at once. */
    private final class AllDays implements Span {
        private final Seat seat;

        AllDays(Seat seat) {
            this.seat = seat;
        }

        @Override
        public String name() {
            return seat.eater().id();
        }

        @Override
        public int days() {
            return request.days();
        }

        @Override
        public Expression intake(Nutrient nutrient) {
            return Intake.of(TotalsDraft.this, seat, nutrient, days(), this::snacks);
        }

        @Override
        public Expression snacks(Measure measure) {
            return TotalsDraft.this.snacks(seat, measure);
        }
    }
}
