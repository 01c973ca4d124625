package batchwright.explain;

import batchwright.person.DayTarget;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Every rule whose cost is worth asking for, changed by 5 % of its figure, by a percentage point where a profile says it in per
 * cent, or by one where it counts something. Allergens are left out: nobody should save on them.
 */
final class TouchedRules {
    private static final int ONE_IN = 20; // 5 %
    private static final int PER_CENT = 100;

    private final PlanRequest request;

    private TouchedRules(PlanRequest request) {
        this.request = request;
    }

    static List<Touched> of(PlanRequest request) {
        var rules = new TouchedRules(request);
        List<Touched> all = new ArrayList<>();
        AtTable.all(request).forEach(at -> all.addAll(rules.of(at)));
        all.add(rules.dishCount());
        rules.keeping().ifPresent(all::add);
        return all;
    }

    private List<Touched> of(AtTable at) {
        DayTarget t = at.target();
        List<Touched> all = new ArrayList<>();
        all.add(energy(at));
        all.addAll(
                floor(at, "protein floor, g", t.proteinLeastG(), FloorDials.lowestProtein(at), DayTarget::withProtein));
        all.add(band(at, "fat band, g", t.fatLeastG(), t.fatMostG(), DayTarget::withFat));
        all.addAll(floor(at, "fibre floor, g", t.fibreLeastG(), 0, DayTarget::withFibre));
        all.addAll(floor(at, "fruit and vegetables, g", t.fruitVegLeastG(), 0, DayTarget::withFruitVeg));
        all.add(band(
                at,
                "container share, kcal",
                t.containerLeastKcal(),
                t.containerMostKcal(),
                (d, least, most) -> d.withContainer(least, most, d.containerProteinLeastG())));
        all.addAll(floor(
                at,
                "container protein, g",
                t.containerProteinLeastG(),
                0,
                (d, g) -> d.withContainer(d.containerLeastKcal(), d.containerMostKcal(), g)));
        all.addAll(snacks(at));
        all.addAll(avoided(at));
        return all;
    }

    private interface Floor {
        DayTarget to(DayTarget target, int least);
    }

    private interface Band {
        DayTarget to(DayTarget target, int least, int most);
    }

    /** A percentage point of the aim at each end. */
    private Touched energy(AtTable at) {
        DayTarget t = at.target();
        int point = Math.max(1, t.energyAimKcal() / PER_CENT);
        boolean wider = BandDials.energyReach(t) >= point;
        return new Touched(
                "energy band, kcal",
                Optional.of(at.name()),
                range(t.energyLeastKcal(), t.energyMostKcal()),
                Optional.of(point).filter(p -> wider).map(p -> moved(at, energyEnds(t, p), DayTarget::withEnergy)),
                Optional.of(point)
                        .filter(p -> t.energyMostKcal() - t.energyLeastKcal() >= 2 * p)
                        .map(p -> moved(at, energyEnds(t, -p), DayTarget::withEnergy)));
    }

    private static int[] energyEnds(DayTarget t, int wider) {
        return new int[] {t.energyLeastKcal() - wider, t.energyMostKcal() + wider};
    }

    private Touched band(AtTable at, String rule, int least, int most, Band set) {
        int[] tighter = {least + part(least), most - part(most)};
        return new Touched(
                rule,
                Optional.of(at.name()),
                range(least, most),
                Optional.of(moved(at, new int[] {least - part(least), most + part(most)}, set)),
                Optional.of(tighter).filter(ends -> ends[0] <= ends[1]).map(ends -> moved(at, ends, set)));
    }

    private Change moved(AtTable at, int[] ends, Band set) {
        return new Change(range(ends[0], ends[1]), r -> at.withTarget(r, target -> set.to(target, ends[0], ends[1])));
    }

    /** None for a floor of nothing: it says nothing. */
    private List<Touched> floor(AtTable at, String rule, int least, int lowest, Floor set) {
        if (least == 0) {
            return List.of();
        }
        return List.of(new Touched(
                rule,
                Optional.of(at.name()),
                Integer.toString(least),
                Optional.of(least - part(least)).filter(g -> g >= lowest).map(g -> at(at, g, set)),
                Optional.of(at(at, least + part(least), set))));
    }

    private Change at(AtTable at, int grams, Floor set) {
        return new Change(Integer.toString(grams), r -> at.withTarget(r, target -> set.to(target, grams)));
    }

    /** 5 %, in whole units, at least one. */
    private static int part(int figure) {
        return Math.min(figure, Math.max(1, (figure + ONE_IN / 2) / ONE_IN));
    }

    private static String range(int least, int most) {
        return least + "-" + most;
    }

    private static List<Touched> snacks(AtTable at) {
        Wishes now = at.wishes();
        return List.of(
                count(
                        "snack measures a day",
                        Optional.of(at.name()),
                        now.snackMeasuresADay(),
                        0,
                        WishDials.MOST_MEASURES,
                        (r, n) -> at.withWishes(r, w -> w.withSnacks(w.snackFoods(), n, w.snackKindsADay()))),
                count(
                        "snack kinds a day",
                        Optional.of(at.name()),
                        now.snackKindsADay(),
                        1,
                        WishDials.MOST_KINDS,
                        (r, n) -> at.withWishes(r, w -> w.withSnacks(w.snackFoods(), w.snackMeasuresADay(), n))));
    }

    private Touched dishCount() {
        return count(
                "dish count",
                Optional.empty(),
                request.mostDishes(),
                1,
                Math.min(SessionDials.MOST_DISHES, request.kitchen().dishes().size()),
                PlanRequest::withMostDishes);
    }

    private interface Count {
        PlanRequest to(PlanRequest request, int count);
    }

    /** One more, one less. */
    private static Touched count(String rule, Optional<String> eater, int now, int least, int most, Count set) {
        return new Touched(
                rule,
                eater,
                Integer.toString(now),
                Optional.of(now + 1).filter(n -> n <= most).map(n -> new Change("" + n, r -> set.to(r, n))),
                Optional.of(now - 1).filter(n -> n >= least).map(n -> new Change("" + n, r -> set.to(r, n))));
    }

    private static List<Touched> avoided(AtTable at) {
        List<Touched> all = new ArrayList<>();
        at.wishes()
                .avoidFoods()
                .forEach(food -> all.add(again(
                        at,
                        food.name(),
                        w -> w.withAvoided(less(w.avoidFoods(), food), w.avoidAllergens(), w.avoidDishes()))));
        at.wishes()
                .avoidDishes()
                .forEach(dish -> all.add(again(
                        at,
                        dish.name(),
                        w -> w.withAvoided(w.avoidFoods(), w.avoidAllergens(), less(w.avoidDishes(), dish)))));
        return all;
    }

    private static Touched again(AtTable at, String name, UnaryOperator<Wishes> less) {
        return new Touched(
                "avoid " + name,
                Optional.of(at.name()),
                "avoided",
                Optional.of(new Change("allowed", r -> at.withWishes(r, less))),
                Optional.empty());
    }

    private static <T> Set<T> less(Set<T> all, T one) {
        Set<T> rest = new HashSet<>(all);
        rest.remove(one);
        return rest;
    }

    /** What does not freeze, frozen. */
    private Optional<Touched> keeping() {
        return SessionDials.keeping(request)
                .map(dial -> new Touched(
                        "keeping",
                        Optional.empty(),
                        "fridge days",
                        Optional.of(new Change("all freeze", dial.dropped())),
                        Optional.empty()));
    }
}
