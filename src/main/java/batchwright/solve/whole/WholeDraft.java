package batchwright.solve.whole;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.MipModel;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.Draft;
import batchwright.solve.rule.Menu;
import batchwright.solve.rule.StockRule;
import batchwright.solve.rule.SwapRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The whole plan, each day of each eater on its own. Its optimum is the cost of the cheapest plan, with nothing left to settle. */
final class WholeDraft implements Draft {
    private final PlanRequest request;
    private final Menu menu;
    private final MipModel model = new MipModel();
    private final Map<Dish, Column> cooked = new LinkedHashMap<>();
    private final Map<Who, Helping> helpings = new LinkedHashMap<>();
    private final Map<Variant, Column> cookedAs = new LinkedHashMap<>();
    private final Map<Who, HelpingAs> swaps = new LinkedHashMap<>();
    private final Map<SnackKey, Column> snacks = new LinkedHashMap<>();
    private final Map<Pack, Column> packs = new LinkedHashMap<>();
    private final Map<String, Column> shops = new LinkedHashMap<>();

    private record SnackKey(Seat seat, Measure measure, int day) {}

    WholeDraft(PlanRequest request) {
        this.request = request;
        this.menu = new Menu(request);
        for (Dish dish : menu.dishes()) {
            cooked.put(dish, model.column("cook." + dish.id(), 0, 1, true, 0));
        }
        for (Seat seat : request.seats()) {
            menu.dishes(seat).forEach(dish -> help(new Who(seat, dish)));
            for (int day = 1; day <= request.days(); day++) {
                for (Measure measure : menu.snacks(seat)) {
                    snacks.put(new SnackKey(seat, measure, day), snack(seat, measure, day));
                }
            }
        }
        menu.dishes().forEach(this::variants);
        Map<Food, Integer> number = new LinkedHashMap<>();
        for (Pack pack : menu.packs()) {
            int nth = number.merge(pack.food(), 1, Integer::sum);
            packs.put(pack, model.column("buy." + pack.food().id() + "." + nth, 0, mostPacks(pack), true, 0));
        }
        if (request.kitchen().shops().tripsCost()) {
            menu.packs().stream()
                    .map(Pack::shop)
                    .distinct()
                    .forEach(shop -> shops.put(shop, model.column("trip." + (shops.size() + 1), 0, 1, true, 0)));
        }
    }

    private void help(Who who) {
        Column cook = Objects.requireNonNull(cooked.get(who.dish()));
        Column gets = cook;
        // Who shares a dish with others need not get any of it when it is cooked.
        if (request.seats().stream()
                        .filter(s -> menu.dishes(s).contains(who.dish()))
                        .count()
                > 1) {
            gets = model.column("gets." + who.name(), 0, 1, true, 0);
            model.atMost("gets_if." + who.name(), Expression.of(gets).plus(cook, -1), 0);
        }
        helpings.put(who, new Helping(who, request.days(), gets, model));
    }

    private void variants(Dish dish) {
        for (int k = 0; k < menu.variants(dish).size(); k++) {
            String name = "swap." + dish.id() + "." + (k + 1);
            cookedAs.put(menu.variants(dish).get(k), model.column(name, 0, 1, true, 0));
        }
        SwapRule.oneAtMost(this, dish);
        request.seats().stream()
                .filter(seat -> menu.dishes(seat).contains(dish))
                .forEach(seat -> swaps.put(new Who(seat, dish), new HelpingAs(this, helping(seat, dish))));
    }

    private HelpingAs as(Seat seat, Dish dish) {
        return Objects.requireNonNull(swaps.get(new Who(seat, dish)));
    }

    /** What one day, from all containers of a dish, has of something of which a gram of a part has so much. */
    Expression onDay(Helping helping, int day, ToDoubleFunction<Part> inGram) {
        var sum = as(helping.who().seat(), helping.who().dish()).more(day, inGram);
        for (Part part : helping.who().dish().parts()) {
            sum.plus(helping.grams(part, day), inGram.applyAsDouble(part));
        }
        return sum;
    }

    /** What each container of a dish has of it. */
    Expression inEach(Helping helping, ToDoubleFunction<Part> inGram) {
        var sum = as(helping.who().seat(), helping.who().dish()).moreInEach(inGram);
        for (Part part : helping.who().dish().parts()) {
            sum.plus(helping.stepsColumn(part), inGram.applyAsDouble(part) * part.stepGrams());
        }
        return sum;
    }

    @Override
    public Expression cookedAs(Variant variant) {
        return Expression.of(Objects.requireNonNull(cookedAs.get(variant)));
    }

    @Override
    public Expression gramsAs(Seat seat, Variant variant, Part part) {
        return as(seat, variant.dish()).grams(variant, part);
    }

    private Column snack(Seat seat, Measure measure, int day) {
        int most = Math.min(measure.snackMost(), seat.eater().wishes().snackMeasuresADay());
        String name = "snack." + measure.food().id() + "." + measure.name() + "."
                + seat.eater().id() + ".day" + day;
        return model.column(name, 0, most, true, 0);
    }

    /** No plan needs more of a pack than what can be used at all, less what is at home and keeps. */
    private double mostPacks(Pack pack) {
        double missing = StockRule.mostUsed(this, pack.food())
                - request.lastingGrams(pack.food()).doubleValue();
        return Math.max(0, Math.ceil(missing / pack.grams().doubleValue()));
    }

    /** Only what the eater may get. */
    List<Helping> helpings(Seat seat) {
        List<Helping> mine = new ArrayList<>();
        menu.dishes(seat).forEach(dish -> mine.add(helping(seat, dish)));
        return mine;
    }

    Helping helping(Seat seat, Dish dish) {
        return Objects.requireNonNull(helpings.get(new Who(seat, dish)));
    }

    Column snackColumn(Seat seat, Measure measure, int day) {
        return Objects.requireNonNull(snacks.get(new SnackKey(seat, measure, day)));
    }

    @Override
    public int rank() {
        return 0;
    }

    @Override
    public boolean onlyBounds() {
        return false;
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
        return Expression.of(Objects.requireNonNull(cooked.get(dish)));
    }

    @Override
    public Expression containers(Seat seat, Dish dish) {
        var sum = new Expression();
        for (int day = 1; day <= request.days(); day++) {
            sum.plus(helping(seat, dish).containers(day), 1);
        }
        return sum;
    }

    @Override
    public int mostContainers(Seat seat, Dish dish) {
        return helping(seat, dish).mostContainers();
    }

    @Override
    public Expression grams(Seat seat, Dish dish, Part part) {
        var sum = new Expression();
        for (int day = 1; day <= request.days(); day++) {
            sum.plus(helping(seat, dish).grams(part, day), 1);
        }
        return sum;
    }

    @Override
    public Optional<Column> kept(Seat seat, Dish dish, Part part) {
        return helping(seat, dish).keptColumn(part);
    }

    @Override
    public Expression snacks(Seat seat, Measure measure) {
        var sum = new Expression();
        for (int day = 1; day <= request.days(); day++) {
            sum.plus(snackColumn(seat, measure, day), 1);
        }
        return sum;
    }

    /** The pack that a column counts, if it counts packs. */
    Optional<Pack> packOf(Column column) {
        return packs.entrySet().stream()
                .filter(e -> e.getValue().equals(column))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    @Override
    public Map<String, Column> shops() {
        return shops;
    }

    @Override
    public Column packs(Pack pack) {
        return Objects.requireNonNull(packs.get(pack));
    }

    @Override
    public List<Span> spans(Seat seat) {
        List<Span> days = new ArrayList<>();
        for (int day = 1; day <= request.days(); day++) {
            days.add(new OneDay(seat, day));
        }
        return days;
    }

    /** One day of one eater. */
    private final class OneDay implements Span {
        private final Seat seat;
        private final int day;

        OneDay(Seat seat, int day) {
            this.seat = seat;
            this.day = day;
        }

        @Override
        public String name() {
            return seat.eater().id() + ".day" + day;
        }

        @Override
        public int days() {
            return 1;
        }

        @Override
        public Expression intake(Nutrient nutrient) {
            var sum = Expression.of(Amounts.inAlways(seat, nutrient));
            for (Helping helping : helpings(seat)) {
                sum.plus(onDay(helping, day, part -> Amounts.inGram(part, nutrient)), 1);
            }
            for (Measure measure : menu.snacks(seat)) {
                sum.plus(snacks(measure), Amounts.inMeasure(measure, nutrient));
            }
            return sum;
        }

        @Override
        public Expression snacks(Measure measure) {
            return Expression.of(snackColumn(seat, measure, day));
        }
    }
}
