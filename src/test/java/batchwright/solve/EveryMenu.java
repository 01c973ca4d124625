package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.person.TimesADay;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.left.LeftDish;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** Every way for one eater to fill containers and to eat them and snacks, day by day, within the rules. */
final class EveryMenu {
    private final PlanRequest request;
    private final String eater;
    private final Wishes wishes;
    private final List<Food> foods;
    private final List<Dish> dishes;
    private final EveryFill fills;
    private final Amounts always;
    private final List<Amounts> snackDays = new ArrayList<>();
    private final Map<Measure, Integer> snacksOfTheDay = new HashMap<>();
    private final Map<List<Integer>, List<Menu>> found = new HashMap<>();

    /**
     * Everything of an eater over all days.
     *
     * @param containers of each dish
     * @param used edible grams of each food, in parts, as {@link BruteForce#spoils} says
     * @param holds of each counted nutrient, in parts of its unit
     */
    record Menu(int[] containers, long[] used, long[] holds) {}

    /**
     * Something eaten.
     *
     * @param holds of each counted nutrient, in parts of its unit
     * @param used edible grams of each food, in parts
     */
    record Amounts(long[] holds, long[] used) {
        Amounts plus(Amounts other, long times) {
            return new Amounts(sum(holds, other.holds, times), sum(used, other.used, times));
        }

        private static long[] sum(long[] a, long[] b, long times) {
            long[] sum = a.clone();
            for (int i = 0; i < sum.length; i++) {
                sum[i] += b[i] * times;
            }
            return sum;
        }
    }

    EveryMenu(PlanRequest request, Seat seat, List<Food> foods, List<Dish> dishes) {
        this.request = request;
        this.eater = seat.eater().id();
        this.wishes = seat.eater().wishes();
        this.foods = foods;
        this.dishes = dishes;
        this.fills = new EveryFill(seat, foods, request.kitchen().shops().reserve());
        Amounts eaten = fills.nothing();
        for (Wishes.Always one : wishes.always()) {
            eaten = eaten.plus(grams(one.measure()), one.count());
        }
        this.always = eaten;
        snackDays(
                request.kitchen().measures().values().stream()
                        .flatMap(List::stream)
                        .toList(),
                0,
                0,
                0,
                always);
    }

    private Amounts grams(Measure measure) {
        Amounts amounts = fills.ofFood(measure.food(), measure.grams(), BigDecimal.ONE);
        if (BruteForce.spoils(request.kitchen(), request.days(), measure.food())) {
            int food = foods.indexOf(measure.food());
            amounts.used()[foods.size() + food] = amounts.used()[food];
        }
        return amounts;
    }

    /** What is always eaten with every allowed choice of snacks. */
    private void snackDays(List<Measure> measures, int from, int taken, int kinds, Amounts eaten) {
        if (from == measures.size()) {
            if (goTogether()) {
                snackDays.add(eaten);
            }
            return;
        }
        Measure measure = measures.get(from);
        snackDays(measures, from + 1, taken, kinds, eaten);
        boolean offered = fills.reaches(measure.food())
                && (wishes.snackFoods().isEmpty() || wishes.snackFoods().get().contains(measure.food()));
        for (int count = 1; offered && count <= measure.snackMost(); count++) {
            if (taken + count <= wishes.snackMeasuresADay() && kinds + 1 <= wishes.snackKindsADay()) {
                snacksOfTheDay.put(measure, count);
                snackDays(measures, from + 1, taken + count, kinds + 1, eaten.plus(grams(measure), count));
                snacksOfTheDay.remove(measure);
            }
        }
    }

    /** Two measures of spreads on each carrier, and of any other kind one snack. */
    private boolean goTogether() {
        int spreads = 0;
        int carriers = 0;
        List<String> kinds = new ArrayList<>();
        for (var entry : snacksOfTheDay.entrySet()) {
            String kind = entry.getKey().snackKind();
            spreads += kind.equals("spread") ? entry.getValue() : 0;
            carriers += kind.equals("carrier") ? entry.getValue() : 0;
            if (!List.of("", "spread", "carrier").contains(kind)) {
                kinds.add(kind);
            }
        }
        for (Wishes.Always one : wishes.always()) {
            carriers += one.measure().snackKind().equals("carrier") ? one.count() : 0;
        }
        return wishes.meals().anySnacks() || (spreads <= 2 * carriers && new HashSet<>(kinds).size() == kinds.size());
    }

    List<Menu> menus() {
        List<List<Amounts>> ways = dishes.stream().map(fills::of).toList();
        choose(ways, 0, 0, new Amounts[dishes.size()]);
        return all(found);
    }

    private static List<Menu> all(Map<List<Integer>, List<Menu>> kept) {
        return kept.values().stream().flatMap(List::stream).toList();
    }

    /** Decides for each dish whether it is eaten and how its containers are filled. */
    private void choose(List<List<Amounts>> ways, int dish, int cooked, Amounts[] chosen) {
        if (dish == ways.size()) {
            layOut(chosen);
            return;
        }
        chosen[dish] = null;
        choose(ways, dish + 1, cooked, chosen);
        if (cooked < request.mostDishes()) {
            for (Amounts way : ways.get(dish)) {
                chosen[dish] = way;
                choose(ways, dish + 1, cooked + 1, chosen);
            }
            chosen[dish] = null;
        }
    }

    private void layOut(Amounts[] chosen) {
        List<Menu> soFar = List.of(new Menu(
                new int[dishes.size()], fills.nothing().used(), fills.nothing().holds()));
        for (int day = 1; day <= request.days() && !soFar.isEmpty(); day++) {
            List<Menu> today = new ArrayList<>();
            servings(chosen, day, 0, wishes.containersADay(), new int[dishes.size()], fills.nothing(), today);
            soFar = sums(soFar, today);
        }
        for (Menu menu : soFar) {
            if (everyChosenIsEaten(chosen, menu)
                    && noneTooOften(menu)
                    && fills.daysAreRight(menu.holds(), request.days())) {
                keep(found, menu, false);
            }
        }
    }

    private static boolean everyChosenIsEaten(Amounts[] chosen, Menu menu) {
        for (int d = 0; d < chosen.length; d++) {
            if (chosen[d] != null && menu.containers()[d] == 0) {
                return false;
            }
        }
        return true;
    }

    private boolean noneTooOften(Menu menu) {
        int most = wishes.meals().sameDishInAll().orElse(Integer.MAX_VALUE);
        return noneAbove(menu.containers(), most);
    }

    /** A dish and what is left of it from before are one. */
    private boolean noneAbove(int[] containers, int most) {
        Map<String, Integer> same = new HashMap<>();
        for (int d = 0; d < containers.length; d++) {
            String name = dishes.get(d).id();
            for (LeftDish left : request.left().dishes()) {
                name = left.dish().id().equals(name) ? left.origin() : name;
            }
            same.merge(name, containers[d], Integer::sum);
        }
        return same.values().stream().allMatch(count -> count <= most);
    }

    /** Tries every way to have what is neither breakfast, lunch nor dinner at lunch or dinner. */
    private boolean hasItsMeals(int[] containers) {
        Map<Dish.Kind, Integer> of = new EnumMap<>(Dish.Kind.class);
        for (int d = 0; d < containers.length; d++) {
            of.merge(dishes.get(d).kind(), containers[d], Integer::sum);
        }
        var meals = wishes.meals();
        int all = wishes.containersADay();
        int half = all - all / 2;
        int lunch = Math.max(half, all - meals.dinners().most().orElse(all));
        int dinner = Math.max(half, all - meals.lunches().most().orElse(all));
        int mains = of.getOrDefault(Dish.Kind.MAIN, 0);
        boolean dealt = false;
        for (int k = 0; k <= mains; k++) {
            dealt |= isRight(of.getOrDefault(Dish.Kind.LUNCH, 0) + k, meals.lunches(), lunch)
                    && isRight(of.getOrDefault(Dish.Kind.DINNER, 0) + mains - k, meals.dinners(), dinner);
        }
        return dealt && isRight(of.getOrDefault(Dish.Kind.BREAKFAST, 0), meals.breakfasts(), 1);
    }

    private static boolean isRight(int count, TimesADay asked, int usualMost) {
        return asked.least() <= count && count <= asked.most().orElse(Math.max(usualMost, asked.least()));
    }

    private void servings(
            Amounts[] chosen, int day, int dish, int left, int[] containers, Amounts eaten, List<Menu> today) {
        if (dish == chosen.length) {
            if (left == 0 && noneAbove(containers, wishes.meals().sameDishADay()) && hasItsMeals(containers)) {
                addSnacks(containers, eaten, today);
            }
            return;
        }
        Amounts way = chosen[dish];
        Dish served = dishes.get(dish);
        if (isRight(served, day, 0)) {
            servings(chosen, day, dish + 1, left, containers, eaten, today);
        }
        boolean keeps = day <= served.fridgeDays() || served.freezes();
        for (int count = 1;
                way != null && keeps && count <= Math.min(left, wishes.meals().sameDishADay());
                count++) {
            if (!isRight(served, day, count)) {
                continue;
            }
            int[] more = containers.clone();
            more[dish] = count;
            servings(chosen, day, dish + 1, left - count, more, eaten.plus(way, count), today);
        }
    }

    /** What is left from before is for one eater, and may have its days; or it is for some, who need not take it. */
    private boolean isRight(Dish dish, int day, int count) {
        for (LeftDish left : request.left().dishes()) {
            if (left.dish().equals(dish)) {
                boolean mine = left.others().isEmpty()
                        ? left.eater().equals(eater)
                        : left.others().contains(eater);
                boolean pinned = !left.byDay().isEmpty();
                return mine ? !pinned || left.byDay().getOrDefault(day, 0) == count : count == 0;
            }
        }
        return true;
    }

    private void addSnacks(int[] containers, Amounts eaten, List<Menu> today) {
        for (Amounts snacks : snackDays) {
            if (fills.dayIsRight(eaten.holds(), snacks.holds())) {
                Amounts all = eaten.plus(snacks, 1);
                today.add(new Menu(containers, all.used(), all.holds()));
            }
        }
    }

    private List<Menu> sums(List<Menu> before, List<Menu> today) {
        Map<List<Integer>, List<Menu>> sums = new HashMap<>();
        for (Menu past : before) {
            for (Menu now : today) {
                int[] containers = past.containers().clone();
                for (int d = 0; d < containers.length; d++) {
                    containers[d] += now.containers()[d];
                }
                keep(
                        sums,
                        new Menu(
                                containers,
                                Amounts.sum(past.used(), now.used(), 1),
                                Amounts.sum(past.holds(), now.holds(), 1)),
                        true);
            }
        }
        return all(sums);
    }

    /**
     * Keeps a menu unless another with the same containers needs no more of any food; drops those it makes needless.
     *
     * @param daysFollow whether more days follow, so that the other must also be as good for what counts on the average
     */
    private void keep(Map<List<Integer>, List<Menu>> kept, Menu menu, boolean daysFollow) {
        List<Integer> key = Arrays.stream(menu.containers()).boxed().toList();
        List<Menu> others = kept.computeIfAbsent(key, k -> new ArrayList<>());
        for (Menu other : others) {
            if (makesNeedless(other, menu, daysFollow)) {
                return;
            }
        }
        others.removeIf(other -> makesNeedless(menu, other, daysFollow));
        others.add(menu);
    }

    private boolean makesNeedless(Menu a, Menu b, boolean daysFollow) {
        for (int i = 0; i < a.used().length; i++) {
            if (a.used()[i] > b.used()[i]) {
                return false;
            }
        }
        return !daysFollow || fills.isAsGoodOnAverage(a.holds(), b.holds());
    }
}
