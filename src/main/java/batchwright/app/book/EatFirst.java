package batchwright.app.book;

import batchwright.answer.EatenFirst;
import batchwright.answer.EatenFirst.OneDay;
import batchwright.app.NeedsOfEater;
import batchwright.app.Workspace;
import batchwright.book.BoxesLeft;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.needs.Needs;
import batchwright.person.Wishes;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Which containers are eaten before anything new is cooked: as many whole days as everybody at the table has containers for, those that
 * must go first in front. The rules of meals hold on them as on any other day.
 */
public final class EatFirst {
    private final Kitchen kitchen;
    private final LocalDate day;
    private final List<Needs> needs;
    /** What is still there, by eater. */
    private final Map<String, List<BoxesLeft.Lot>> left = new HashMap<>();

    private EatFirst(Workspace workspace, List<Needs> needs) {
        this.kitchen = workspace.kitchen();
        this.day = workspace.cookingDay();
        this.needs = needs;
    }

    /**
     * @param eaters as the user names them
     * @param most days that are asked for
     * @throws Refused when there is no such eater, or a file has an error
     */
    public static EatenFirst of(Workspace workspace, List<String> eaters, int most) {
        BoxesLeft boxes = BoxesLeft.of(workspace.book());
        if (boxes.lots().isEmpty()) {
            return EatenFirst.none(workspace.cookingDay());
        }
        List<Needs> needs =
                eaters.stream().map(name -> NeedsOfEater.answer(workspace, name)).toList();
        var first = new EatFirst(workspace, needs);
        needs.forEach(each -> first.left.put(
                each.eater().id(), new ArrayList<>(boxes.of(each.eater().id()))));
        return first.days(most);
    }

    private EatenFirst days(int most) {
        List<OneDay> days = new ArrayList<>();
        int number = 0;
        boolean whole = needs.stream().noneMatch(Needs::stopsPlanning);
        while (whole && number < most) {
            LocalDate date = day.plusDays(number);
            Map<String, List<BoxesLeft.Lot>> chosen = new HashMap<>();
            for (Needs each : needs) {
                whole &= choice(each, date)
                        .map(boxes -> chosen.put(each.eater().id(), boxes) == null)
                        .orElse(false);
            }
            if (whole) {
                for (Needs each : needs) {
                    List<BoxesLeft.Lot> boxes = chosen.getOrDefault(each.eater().id(), List.of());
                    take(each.eater().id(), boxes);
                    days.add(day(each, date, boxes));
                }
                number++;
            }
        }
        List<BoxesLeft.Lot> over = needs.stream()
                .flatMap(each -> left.getOrDefault(each.eater().id(), List.of()).stream())
                .toList();
        return new EatenFirst(day, number, days, over);
    }

    /** As many containers as the eater has in a day; empty when there are not enough that are still good. */
    private Optional<List<BoxesLeft.Lot>> choice(Needs needs, LocalDate date) {
        Wishes wishes = needs.eater().wishes();
        Map<String, Integer> ofDish = new HashMap<>();
        List<BoxesLeft.Lot> chosen = new ArrayList<>();
        int[] kinds = new int[2];
        for (BoxesLeft.Lot lot : left.getOrDefault(needs.eater().id(), List.of())) {
            if (lot.until().isBefore(date)) {
                continue;
            }
            String id = lot.boxes().dish();
            Optional<Dish> dish = Optional.ofNullable(kitchen.dishes().get(id));
            boolean breakfast = dish.filter(d -> d.kind() == Dish.Kind.BREAKFAST).isPresent();
            int kind = breakfast ? 0 : 1;
            int mostOfKind = breakfast
                    ? Math.min(wishes.meals().mostBreakfasts(), wishes.containersADay())
                    : wishes.containersADay() - wishes.meals().leastBreakfasts();
            int mostOfDish = dish.map(wishes::mostADay).orElse(wishes.meals().sameDishADay());
            int room = Math.min(
                    Math.min(mostOfDish - ofDish.getOrDefault(id, 0), mostOfKind - kinds[kind]),
                    wishes.containersADay() - kinds[0] - kinds[1]);
            int count = Math.min(room, lot.count());
            if (count > 0) {
                chosen.add(lot.of(count));
                ofDish.merge(id, count, Integer::sum);
                kinds[kind] += count;
            }
        }
        boolean full = kinds[0] + kinds[1] == wishes.containersADay()
                && kinds[0] >= wishes.meals().leastBreakfasts();
        return full ? Optional.of(chosen) : Optional.empty();
    }

    private void take(String eater, List<BoxesLeft.Lot> boxes) {
        List<BoxesLeft.Lot> mine = left.getOrDefault(eater, List.of());
        for (BoxesLeft.Lot taken : boxes) {
            for (int i = 0; i < mine.size(); i++) {
                BoxesLeft.Lot lot = mine.get(i);
                if (lot.of(1).equals(taken.of(1))) {
                    int rest = lot.count() - taken.count();
                    mine.remove(i);
                    if (rest > 0) {
                        mine.add(i, lot.of(rest));
                    }
                    break;
                }
            }
        }
    }

    private static OneDay day(Needs needs, LocalDate date, List<BoxesLeft.Lot> boxes) {
        BigDecimal kcal = sum(boxes, lot -> lot.each().kcal());
        BigDecimal protein = sum(boxes, lot -> lot.each().proteinG());
        for (Wishes.Always always : needs.eater().wishes().always()) {
            BigDecimal grams = always.measure().grams().multiply(BigDecimal.valueOf(always.count()));
            var eaten = always.measure().food().per100g().ofGrams(grams);
            kcal = kcal.add(eaten.get(Nutrient.ENERGY));
            protein = protein.add(eaten.get(Nutrient.PROTEIN));
        }
        BigDecimal aim = needs.target()
                .map(target -> BigDecimal.valueOf(target.energyAimKcal()))
                .orElse(kcal);
        BigDecimal floor = needs.target()
                .map(target -> BigDecimal.valueOf(target.day(Nutrient.PROTEIN).least()))
                .orElse(protein);
        return new OneDay(
                date,
                needs.eater().id(),
                boxes,
                kcal,
                aim.subtract(kcal).max(BigDecimal.ZERO),
                floor.subtract(protein).max(BigDecimal.ZERO));
    }

    private static BigDecimal sum(
            List<BoxesLeft.Lot> boxes, Function<BoxesLeft.Lot, Optional<BigDecimal>> each) {
        return boxes.stream()
                .map(lot -> each.apply(lot).orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(lot.count())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
