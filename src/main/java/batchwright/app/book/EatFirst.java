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
import batchwright.person.KindsADay;
import batchwright.person.Wishes;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Which containers are eaten before anything new is cooked: as many whole days as everybody at the table has containers for, those that
 * must go first in front. The rules of meals hold on them as on any other day.
 */
public final class EatFirst {
    private final Kitchen kitchen;
    private final LocalDate day;
    private final List<Needs> needs;
    private final MayEat mayEat;
    /** What is still there, by eater. */
    private final Map<String, List<BoxesLeft.Lot>> left = new HashMap<>();

    private EatFirst(Workspace workspace, List<Needs> needs) {
        this.kitchen = workspace.kitchen();
        this.day = workspace.cookingDay();
        this.needs = needs;
        this.mayEat = new MayEat(kitchen, workspace.keptPlans(), workspace.book());
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
        List<Needs> needs = eaters.stream()
                .map(name -> NeedsOfEater.answer(workspace, name))
                .toList();
        var first = new EatFirst(workspace, needs);
        needs.forEach(each -> first.left.put(each.eater().id(), first.offered(each, boxes)));
        return first.days(most);
    }

    /** Without dishes that the eater avoids; what is past its day stays, to be thrown away. */
    private List<BoxesLeft.Lot> offered(Needs each, BoxesLeft boxes) {
        return boxes.of(each.eater().id()).stream()
                .filter(lot -> lot.until().isBefore(day) || MayEat.to(each.eater(), lot, kitchen))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private EatenFirst days(int most) {
        List<OneDay> days = new ArrayList<>();
        int number = 0;
        boolean whole = needs.stream().noneMatch(Needs::stopsPlanning);
        while (whole && number < most) {
            LocalDate date = day.plusDays(number);
            List<Plate> plates = needs.stream().map(Plate::new).toList();
            Map<String, List<BoxesLeft.Lot>> rest = new HashMap<>();
            left.forEach((eater, lots) -> rest.put(eater, new ArrayList<>(lots)));
            plates.forEach(plate -> plate.serve(rest.getOrDefault(plate.eater(), List.of()), date));
            for (Plate plate : plates) {
                needs.stream()
                        .map(other -> other.eater().id())
                        .filter(other -> !other.equals(plate.eater()))
                        .forEach(other -> plate.serve(rest.getOrDefault(other, List.of()), date));
            }
            whole = plates.stream().allMatch(Plate::isRight);
            if (whole) {
                left.putAll(rest);
                plates.forEach(plate -> days.add(day(plate.needs, date, plate.boxes)));
                number++;
            }
        }
        Map<Boolean, List<BoxesLeft.Lot>> isPast = needs.stream()
                .flatMap(each -> left.getOrDefault(each.eater().id(), List.of()).stream())
                .collect(Collectors.partitioningBy(lot -> lot.until().isBefore(day)));
        return new EatenFirst(
                day, number, days, isPast.getOrDefault(false, List.of()), isPast.getOrDefault(true, List.of()));
    }

    /** One eater's containers of a day. Everybody has of their own first; then, where that is too little, of what others have left. */
    private final class Plate {
        private final Needs needs;
        private final Wishes wishes;
        private final List<BoxesLeft.Lot> boxes = new ArrayList<>();
        private final List<Dish> dishes = new ArrayList<>();

        Plate(Needs needs) {
            this.needs = needs;
            this.wishes = needs.eater().wishes();
        }

        String eater() {
            return needs.eater().id();
        }

        /** @param lots from which it is taken */
        void serve(List<BoxesLeft.Lot> lots, LocalDate date) {
            for (BoxesLeft.Lot lot : List.copyOf(lots)) {
                Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
                if (dish == null || lot.until().isBefore(date) || isFull() || !mayHave(lot)) {
                    continue;
                }
                int count = 0;
                while (!isFull() && count < lot.count() && fits(wishes, dishes, dish)) {
                    dishes.add(dish);
                    count++;
                }
                if (count > 0) {
                    boxes.add(lot.of(count));
                    int at = lots.indexOf(lot);
                    lots.remove(at);
                    if (lot.count() > count) {
                        lots.add(at, lot.of(lot.count() - count));
                    }
                }
            }
        }

        private boolean mayHave(BoxesLeft.Lot lot) {
            return lot.boxes().eater().equals(eater())
                    || (mayEat.anothers(needs.eater(), lot)
                            && needs.target()
                                    .filter(target -> mayEat.fits(lot, target))
                                    .isPresent());
        }

        private boolean isFull() {
            return dishes.size() >= wishes.containersADay();
        }

        /** As many containers as the eater has in a day, for the right meals. */
        boolean isRight() {
            return isFull() && wishes.kindsADay().stream().allMatch(kinds -> number(kinds, dishes) >= kinds.least());
        }
    }

    /** Whether one more container of a dish breaks no rule of meals. */
    static boolean fits(Wishes wishes, List<Dish> dishes, Dish another) {
        long same = dishes.stream().filter(another::equals).count();
        return same < wishes.mostADay(another)
                && wishes.kindsADay().stream()
                        .filter(kinds -> kinds.counts(another))
                        .allMatch(kinds -> number(kinds, dishes) < kinds.most());
    }

    private static long number(KindsADay kinds, List<Dish> dishes) {
        return dishes.stream().filter(kinds::counts).count();
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

    private static BigDecimal sum(List<BoxesLeft.Lot> boxes, Function<BoxesLeft.Lot, Optional<BigDecimal>> each) {
        return boxes.stream()
                .map(lot -> each.apply(lot).orElse(BigDecimal.ZERO).multiply(BigDecimal.valueOf(lot.count())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
