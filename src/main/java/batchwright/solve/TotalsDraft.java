package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A plan as totals over all days: containers by dish and eater, grams of each part in all of them together, snacks, packs. The
 * day rules hold on the average, and grams need not be multiples of the scale's step, so that its optimum is a lower bound
 * for every plan laid out day by day.
 */
final class TotalsDraft extends AbstractDraft {
    private final Map<Dish, Column> cooked = new LinkedHashMap<>();
    private final Map<Seat, Map<Dish, Column>> containers = new LinkedHashMap<>();
    private final Map<PartKey, Column> moreGrams = new LinkedHashMap<>();
    private final Map<SnackKey, Column> snacks = new LinkedHashMap<>();
    private final Decides decides;
    private final int rank;

    private record SnackKey(Seat seat, Measure measure) {}

    /** What is decided by branching on the model, and what is left to a later step. */
    private enum Decides {
        DISHES,
        EVERY_DAY_ALIKE,
        EVERYTHING
    }

    /** To choose dishes: only whether a dish is cooked is decided by branching on this model. */
    static TotalsDraft choosingDishes(PlanRequest request, Menu menu, Stop stop) {
        return new TotalsDraft(request, menu, stop, Decides.DISHES);
    }

    /** With every dish of the menu cooked and the same containers on every day, which is decided by branching. */
    static TotalsDraft everyDayAlike(PlanRequest request, Menu menu, Stop stop) {
        return new TotalsDraft(request, menu, stop, Decides.EVERY_DAY_ALIKE);
    }

    /** With every dish of the menu cooked, and everything decided by branching. */
    static TotalsDraft cookingAll(PlanRequest request, Menu menu, Stop stop) {
        return new TotalsDraft(request, menu, stop, Decides.EVERYTHING);
    }

    private TotalsDraft(PlanRequest request, Menu menu, Stop stop, Decides decides) {
        super(request, menu, stop);
        this.decides = decides;
        this.rank = decides == Decides.EVERYTHING ? 1 : Column.LATER;
        int leastCooked = decides == Decides.DISHES ? 0 : 1;
        for (Dish dish : menu.dishes()) {
            cooked.put(dish, model().column("cook." + dish.id(), leastCooked, 1, true, 0));
        }
        for (Seat seat : request.seats()) {
            Map<Dish, Column> mine = new LinkedHashMap<>();
            containers.put(seat, mine);
            for (Dish dish : menu.dishes(seat)) {
                mine.put(dish, fill(seat, dish));
                dish.parts().forEach(part -> part(PartKey.of(seat, dish, part), part));
            }
            menu.snacks(seat).forEach(measure -> snack(seat, measure));
        }
        addVariants(rank);
        addPacks(rank);
    }

    private Column fill(Seat seat, Dish dish) {
        int most = mostContainers(seat, dish) / containersAColumnStep();
        boolean possible =
                decides != Decides.EVERY_DAY_ALIKE || dish.keepsUntil(request().days());
        int fillRank = decides == Decides.DISHES ? Column.LATER : 0;
        String name = "fill." + dish.id() + "." + seat.eater().id();
        return model().column(name, 0, possible ? most : 0, true, fillRank);
    }

    private void snack(Seat seat, Measure measure) {
        int aDay = Math.min(measure.snackMost(), seat.eater().wishes().snackMeasuresADay());
        String name = "snack." + measure.food().id() + "." + measure.name() + "."
                + seat.eater().id();
        int most = aDay * request().days();
        snacks.put(new SnackKey(seat, measure), model().column(name, 0, most, true, rank));
    }

    private int containersAColumnStep() {
        return decides == Decides.EVERY_DAY_ALIKE ? request().days() : 1;
    }

    private void part(PartKey key, Part part) {
        boolean allowed = menu().allows(key.seat(), part);
        double most = allowed ? part.mostGrams() - surelyInOne(part) : 0;
        int containers = mostContainers(key.seat(), key.dish());
        moreGrams.put(key, model().column("more_grams." + key.name(), 0, most * containers, false, 0));
        addKept(key, part, rank);
    }

    @Override
    Expression gramsAs(String name, Seat seat, Dish dish, Part part) {
        return Expression.of(model().column(name, 0, (double) part.mostGrams() * mostContainers(seat, dish), false, 0));
    }

    /** Grams that are in each container anyway: in a model of grams above these, a container with the least of all has zeros. */
    private static int surelyInOne(Part part) {
        return part.optional() ? 0 : part.leastGrams();
    }

    @Override
    public int rank() {
        return rank;
    }

    @Override
    public boolean onlyBounds() {
        return true;
    }

    @Override
    public Expression cooked(Dish dish) {
        return Expression.of(Lookup.get(cooked, dish));
    }

    Column cookedColumn(Dish dish) {
        return Lookup.get(cooked, dish);
    }

    Column containersColumn(Seat seat, Dish dish) {
        return Lookup.get(Lookup.get(containers, seat), dish);
    }

    @Override
    public Expression containers(Seat seat, Dish dish) {
        return new Expression().plus(containersColumn(seat, dish), containersAColumnStep());
    }

    @Override
    public int mostContainers(Seat seat, Dish dish) {
        int days = dish.freezes() ? request().days() : Math.min(request().days(), dish.fridgeDays());
        return seat.eater().wishes().mostInAll(dish, days);
    }

    @Override
    public Expression grams(Seat seat, Dish dish, Part part) {
        return Expression.of(Lookup.get(moreGrams, PartKey.of(seat, dish, part)))
                .plus(containers(seat, dish), surelyInOne(part));
    }

    @Override
    public Expression snacks(Seat seat, Measure measure) {
        return Expression.of(Lookup.get(snacks, new SnackKey(seat, measure)));
    }

    @Override
    public List<Span> spans(Seat seat) {
        return List.of(new AllDays(seat));
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
            return request().days();
        }

        @Override
        public Expression intake(Nutrient nutrient) {
            return Amounts.inAllDays(TotalsDraft.this, seat, nutrient);
        }

        @Override
        public Expression snacks(Measure measure) {
            return TotalsDraft.this.snacks(seat, measure);
        }
    }
}
