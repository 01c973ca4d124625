package batchwright.explain;

import batchwright.food.Food;
import batchwright.person.Wishes;
import batchwright.plan.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Soft rules for how an eater likes to be fed. */
public final class SoftWishes {
    /** The most that a profile may ask for. */
    public static final int MOST_MEASURES = 12;

    public static final int MOST_KINDS = 6;
    static final int MOST_CONTAINERS = 6;

    private SoftWishes() {}

    /**
     * So many containers more or less, fewest first. Another count is no looser rule.
     */
    static SoftRule containersADay(EaterInRequest at, int dishes, int mostMoreOrLess) {
        int now = at.wishes().containersADay();
        List<List<Loosening>> loosenings = new ArrayList<>();
        for (int change = 1; change <= mostMoreOrLess; change++) {
            loosenings.add(Stream.of(now + change, now - change)
                    .filter(other -> other >= 1 && other <= MOST_CONTAINERS)
                    .map(other -> containers(at, other))
                    .toList());
        }
        return SoftRule.ofOtherFigures(
                "containers a day",
                at.name() + " gets exactly " + Phrases.count(now, "container", "containers")
                        + " a day, of one dish at most "
                        + at.wishes().meals().sameDishADay() + "; " + Phrases.count(dishes, "dish", "dishes")
                        + " can be served",
                loosenings);
    }

    /** Another count of containers a day. */
    static Loosening containers(EaterInRequest at, int other) {
        return Loosening.once(
                request -> at.withWishes(request, w -> w.withContainersADay(other)),
                "ask for " + other + " a day",
                new Remedy.ChangeContainers(at.eater(), other));
    }

    static SoftRule snackLimits(EaterInRequest at) {
        Wishes now = at.wishes();
        int measures = now.snackMeasuresADay();
        int kinds = now.snackKindsADay();
        Loosening moreMeasures = new Loosening(
                MOST_MEASURES - measures,
                (request, k) ->
                        at.withWishes(request, w -> w.withSnacks(w.snackFoods(), measures + k, w.snackKindsADay())),
                k -> "allow " + Phrases.count(measures + k, "measure", "measures") + " a day",
                k -> snacks(at, OptionalInt.of(measures + k), OptionalInt.empty()));
        Loosening moreKinds = new Loosening(
                MOST_KINDS - kinds,
                (request, k) ->
                        at.withWishes(request, w -> w.withSnacks(w.snackFoods(), w.snackMeasuresADay(), kinds + k)),
                k -> "allow " + Phrases.count(kinds + k, "kind", "kinds") + " a day",
                k -> snacks(at, OptionalInt.empty(), OptionalInt.of(kinds + k)));
        Loosening moreOfBoth = new Loosening(
                Math.max(moreMeasures.reach(), moreKinds.reach()),
                (request, k) -> at.withWishes(
                        request,
                        w -> w.withSnacks(
                                w.snackFoods(), upTo(MOST_MEASURES, measures + k), upTo(MOST_KINDS, kinds + k))),
                k -> "allow " + Phrases.count(upTo(MOST_MEASURES, measures + k), "measure", "measures") + " and "
                        + Phrases.count(upTo(MOST_KINDS, kinds + k), "kind", "kinds") + " a day",
                k -> snacks(
                        at,
                        OptionalInt.of(upTo(MOST_MEASURES, measures + k)),
                        OptionalInt.of(upTo(MOST_KINDS, kinds + k))));
        List<List<Loosening>> loosenings =
                new ArrayList<>(List.of(List.of(moreMeasures, moreKinds), List.of(moreOfBoth)));
        if (now.snackFoods().isPresent()) {
            loosenings.add(List.of(Loosening.once(
                    request -> at.withWishes(request, w -> w.withSnacks(Optional.empty(), measures, kinds)),
                    "offer every snack",
                    new Remedy.OfferEverySnack(at.eater()))));
        }
        return new SoftRule(
                "snack limits",
                at.name() + " eats at most " + Phrases.count(measures, "measure", "measures")
                        + " of snacks a day, of at most " + Phrases.count(kinds, "kind", "kinds")
                        + now.snackFoods().map(SoftWishes::only).orElse(""),
                request -> at.withWishes(request, w -> w.withSnacks(Optional.empty(), MOST_MEASURES, MOST_KINDS)),
                loosenings);
    }

    private static String only(Set<Food> foods) {
        return ", only of " + Phrases.some(foods.stream().map(Food::name).toList());
    }

    private static Remedy snacks(EaterInRequest at, OptionalInt measures, OptionalInt kinds) {
        return new Remedy.AllowSnacks(at.eater(), measures, kinds);
    }

    private static int upTo(int most, int wanted) {
        return Math.min(most, wanted);
    }
}
