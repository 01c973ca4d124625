package batchwright.audit;

import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Allergen;
import batchwright.food.Contents;
import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.FatPouredOff;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.limit.TestTarget;
import batchwright.person.Avoided;
import batchwright.person.Eater;
import batchwright.person.Wishes;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.plan.Seat;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.params.provider.Arguments;

/** What the tests of the audit share: cases of a plan changed in one thing, requests and kitchens changed in one thing. */
final class AuditCases {
    private AuditCases() {}

    /** The plan fails these checks and no others, and says why. */
    static void assertFails(PlanRequest request, Plan plan, Set<String> expected) {
        AuditReport report = audit(request, plan);

        assertThat(failed(report)).as(report.toString()).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(report.passed()).isFalse();
        report.checks().stream()
                .filter(check -> !check.passed())
                .forEach(check -> assertThat(check.detail()).isNotBlank());
    }

    /** Of a plan as if it had been made for this request. */
    static AuditReport audit(PlanRequest request, Plan plan) {
        return Audit.of(request, Plan.of(plan.first().withRequest(request)));
    }

    static PlanRequest days(int days) {
        PlanRequest r = request();
        return new PlanRequest(r.kitchen(), r.seats(), days, r.budget(), r.mostDishes(), r.patience());
    }

    static Lot lot(int grams, int day) {
        return new Lot(decimal(grams), Optional.of(COOKING_DAY.plusDays(day - 1L)));
    }

    static Kitchen pantry(Food food, Lot... lots) {
        Map<Food, List<Lot>> pantry = new LinkedHashMap<>(kitchen().pantry());
        pantry.put(food, List.of(lots));
        return pantry(kitchen(), pantry);
    }

    static Kitchen pantry(Kitchen k, Map<Food, List<Lot>> pantry) {
        return new Kitchen(
                k.foods(), k.measures(), k.yields(), k.packs(), k.dishes(), pantry, k.currency(), k.cookingDay());
    }

    static Plan fromPantry(Plan plan, Food food, int grams) {
        return Tamper.line(plan, food, p -> new Purchase(food, p.packs(), p.usedGrams(), decimal(grams)));
    }

    static Plan beans(Pack pack, int count) {
        return Tamper.line(
                honest(), BEANS, p -> new Purchase(BEANS, Map.of(pack, count), p.usedGrams(), p.fromPantryGrams()));
    }

    static Pack cans(int units, int grams, int drained, long minor) {
        Pack p = packOf(BEANS);
        var contents = new Contents(units, decimal(grams), Optional.of(decimal(drained)));
        return new Pack(p.food(), p.shop(), "cans", contents, new Money(minor), Optional.empty(), p.seen(), p.note());
    }

    static Arguments one(String what, PlanRequest request, Plan plan, String... checks) {
        return Arguments.of(what, request, plan, Set.of(checks));
    }

    static Arguments asked(String what, DayTarget target, String check) {
        return one(what, seat(BENS_SEAT, target), seated(target), check);
    }

    static DayTarget target(
            int aim, int least, int most, int protein, int fatLeast, int fatMost, int fibre, int fruit) {
        return TestTarget.energy(aim, least, most)
                .protein(protein)
                .fat(fatLeast, fatMost)
                .fibre(fibre)
                .fruitVeg(fruit)
                .container(500, 650)
                .containerProtein(30)
                .target();
    }

    /** Two days of 1570 kcal and two of 1556 are 1563 on average. */
    static DayTarget ben(Range onAverage) {
        return new TestTarget(BENS_SEAT.target()).mean(onAverage).target();
    }

    /** The honest plan, planned for this target of Ben's. */
    static Plan seated(DayTarget target) {
        return Tamper.eaters(
                honest(),
                eaters -> List.of(
                        new EaterDays(new Seat(BEN, target), eaters.get(0).days()), eaters.get(1)));
    }

    static PlanRequest seat(Seat seat, DayTarget target) {
        return seats(seat, new Seat(seat.eater(), target));
    }

    static PlanRequest seats(Seat old, Seat other) {
        PlanRequest r = request();
        List<Seat> seats =
                r.seats().stream().map(s -> s.equals(old) ? other : s).toList();
        return new PlanRequest(r.kitchen(), seats, r.days(), r.budget(), r.mostDishes(), r.patience());
    }

    static PlanRequest wishes(Seat seat, UnaryOperator<Wishes> change) {
        Eater e = seat.eater();
        return seats(
                seat,
                new Seat(
                        new Eater(
                                e.id(),
                                e.name(),
                                e.body(),
                                e.activity(),
                                e.goal(),
                                e.health(),
                                e.adjustments(),
                                change.apply(e.wishes())),
                        seat.target()));
    }

    static Wishes wishes(Wishes w, int containersADay) {
        return new Wishes(
                containersADay,
                Avoided.NOTHING.with(w.avoidFoods(), w.avoidAllergens(), w.avoidDishes()),
                w.always(),
                w.snackFoods(),
                w.snackMeasuresADay(),
                w.snackKindsADay());
    }

    static Wishes avoiding(Wishes w, Set<Food> foods, Set<Allergen> allergens, Set<Dish> dishes) {
        return new Wishes(
                w.containersADay(),
                Avoided.NOTHING.with(foods, allergens, dishes),
                w.always(),
                w.snackFoods(),
                w.snackMeasuresADay(),
                w.snackKindsADay());
    }

    static Wishes snacking(Wishes w, Optional<Set<Food>> only, int measures, int kinds) {
        return new Wishes(
                w.containersADay(),
                Avoided.NOTHING.with(w.avoidFoods(), w.avoidAllergens(), w.avoidDishes()),
                w.always(),
                only,
                measures,
                kinds);
    }

    static PlanRequest dishes(int most) {
        PlanRequest r = request();
        return new PlanRequest(r.kitchen(), r.seats(), r.days(), r.budget(), most, r.patience());
    }

    static Kitchen dishes(Kitchen k, Map<String, Dish> dishes) {
        return new Kitchen(
                k.foods(), k.measures(), k.yields(), k.packs(), dishes, k.pantry(), k.currency(), k.cookingDay());
    }

    static PlanRequest with(Kitchen kitchen) {
        PlanRequest r = request();
        return new PlanRequest(kitchen, r.seats(), r.days(), r.budget(), r.mostDishes(), r.patience());
    }

    static Kitchen packs(Kitchen k, Pack other) {
        Map<Food, List<Pack>> packs = new LinkedHashMap<>(k.packs());
        packs.put(other.food(), List.of(other));
        return new Kitchen(
                k.foods(), k.measures(), k.yields(), packs, k.dishes(), k.pantry(), k.currency(), k.cookingDay());
    }

    static Kitchen measures(Kitchen k, Measure other) {
        Map<Food, List<Measure>> measures = new LinkedHashMap<>(k.measures());
        measures.put(other.food(), List.of(other));
        return new Kitchen(
                k.foods(), measures, k.yields(), k.packs(), k.dishes(), k.pantry(), k.currency(), k.cookingDay());
    }

    static Kitchen foods(Kitchen k, Food other) {
        Map<String, Food> foods = new LinkedHashMap<>(k.foods());
        foods.put(other.id(), other);
        return new Kitchen(
                foods, k.measures(), k.yields(), k.packs(), k.dishes(), k.pantry(), k.currency(), k.cookingDay());
    }

    /** The kitchen with one part of chicken and rice written otherwise. */
    static Kitchen dish(Kitchen k, Part old, Part other) {
        Dish d = CHICKEN_RICE;
        List<Part> parts =
                d.parts().stream().map(p -> p.equals(old) ? other : p).toList();
        Dish changed = new Dish(
                d.id(), d.name(), d.kind(), d.fridgeDays(), d.freezes(), d.reheat(), parts, d.staples(), d.steps());
        return dishes(k, Map.of(d.id(), changed, EGG_POT.id(), EGG_POT));
    }

    static Dish withStaple(Dish d, String staple) {
        return new Dish(
                d.id(),
                d.name(),
                d.kind(),
                d.fridgeDays(),
                d.freezes(),
                d.reheat(),
                d.parts(),
                List.of(Staple.of(staple)),
                d.steps());
    }

    static PlanRequest on(PlanRequest request, UnaryOperator<Kitchen> change) {
        return request.withKitchen(change.apply(request.kitchen()));
    }

    /** Chicken with 2 % of fat, of which so many grams in 100 g of meat are poured off. */
    static Part chickenWithout(String fat) {
        return new Part(
                MEAT.name(),
                MEAT.optional(),
                MEAT.stepGrams(),
                MEAT.pieces(),
                MEAT.leastGrams(),
                MEAT.mostGrams(),
                MEAT.mix(),
                new FatPouredOff(new BigDecimal(fat)));
    }

    static Part boiledTo(String factor) {
        var yield = new CookedYield(RICE, "boiled", new BigDecimal(factor), "memory", "invented");
        return new Part(
                "rice", true, 5, false, 40, 100, List.of(new Ingredient(RICE, decimal(80), Optional.of(yield))));
    }

    static Pack priced(Pack p, long minor) {
        return new Pack(p.food(), p.shop(), p.label(), p.grams(), new Money(minor), p.seen(), p.note());
    }

    static Purchase priced(Purchase line, long minor) {
        Pack pack = priced(packOf(line.food()), minor);
        return new Purchase(line.food(), Map.of(pack, 3), line.usedGrams(), line.fromPantryGrams());
    }

    static Purchase sized(Purchase line, int grams) {
        Pack p = packOf(line.food());
        Pack pack = new Pack(p.food(), p.shop(), p.label(), decimal(grams), p.price(), p.seen(), p.note());
        return new Purchase(line.food(), Map.of(pack, 3), line.usedGrams(), line.fromPantryGrams());
    }

    static Set<String> failed(AuditReport report) {
        return report.checks().stream()
                .filter(check -> !check.passed())
                .map(AuditReport.Check::rule)
                .collect(Collectors.toSet());
    }

    static String detail(AuditReport report, String rule) {
        return report.checks().stream()
                .filter(check -> check.rule().equals(rule))
                .findFirst()
                .orElseThrow()
                .detail();
    }
}
