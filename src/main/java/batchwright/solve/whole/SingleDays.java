package batchwright.solve.whole;

import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Part;
import batchwright.limit.Limit;
import batchwright.limit.Scope;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Expression;
import batchwright.solve.rule.Amounts;
import batchwright.solve.rule.ContainerLimitsRule;
import batchwright.solve.rule.ContainersADayRule;
import batchwright.solve.rule.MealsRule;
import batchwright.solve.rule.PartRangeRule;
import batchwright.solve.rule.Rule;
import batchwright.solve.rule.SwapRule;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * The rules that single containers and days keep by themselves: each day has its containers, each container keeps the rules of
 * containers, and whoever gets a dish gets a container of it.
 */
final class SingleDays {
    /** Rules whose rows over all days are sums of the rows of single containers and days, here and in {@link Helping}. */
    static final Set<Rule> KEEPS = Set.of(
            new ContainerLimitsRule(), new ContainersADayRule(), new MealsRule(), new PartRangeRule(), new SwapRule());

    private final WholeDraft draft;

    private SingleDays(WholeDraft draft) {
        this.draft = draft;
    }

    static void addTo(WholeDraft draft) {
        new SingleDays(draft).add();
    }

    private void add() {
        for (Seat seat : draft.request().seats()) {
            containersOfEachDay(seat);
            for (Helping helping : draft.helpings(seat)) {
                notForNothing(helping);
                seat.target().limits().stream()
                        .filter(Limit::isOnContainers)
                        .filter(limit -> !ContainerLimitsRule.alwaysKept(
                                draft.menu(), helping.who().dish(), limit))
                        .forEach(limit -> eachContainer(helping, limit));
            }
            orderOfDays(seat);
        }
    }

    private void containersOfEachDay(Seat seat) {
        int wanted = seat.eater().wishes().containersADay();
        for (int day = 1; day <= draft.request().days(); day++) {
            var sum = new Expression();
            for (Helping helping : draft.helpings(seat)) {
                sum.plus(helping.containers(day), 1);
            }
            int today = day;
            MealsRule.add(
                    draft,
                    seat,
                    seat.eater().id() + ".day" + day,
                    1,
                    dish -> draft.helping(seat, dish).containers(today));
            draft.model().row("containers." + seat.eater().id() + ".day" + day, sum, wanted, wanted);
        }
    }

    private void notForNothing(Helping helping) {
        Expression containers =
                draft.containers(helping.who().seat(), helping.who().dish());
        draft.model()
                .atLeast(
                        "gets_some." + helping.who().name(),
                        new Expression().plus(containers, 1).plus(helping.gets(), -1),
                        0);
    }

    /** In steps of one container, and, which follows but helps a solver, in each container that is served. */
    private void eachContainer(Helping helping, Limit limit) {
        Dish dish = helping.who().dish();
        add(limit, helping.who().name(), nutrient -> inEach(helping, nutrient), helping.gets());
        if (!draft.menu().variants(dish).isEmpty()) {
            return; // the rows below are said of a dish that is cooked as it is written
        }
        for (int day = 1; day <= draft.request().days(); day++) {
            int today = day;
            List<Column> places = helping.servedColumns(day);
            for (int k = 0; k < places.size(); k++) {
                int place = k;
                add(
                        limit,
                        helping.who().name() + ".day" + day + "." + (k + 1),
                        nutrient -> sum(
                                dish, part -> helping.partColumns(part, today).get(place), nutrient),
                        places.get(k));
            }
        }
    }

    private Expression inEach(Helping helping, Nutrient nutrient) {
        return draft.inEach(helping, part -> Amounts.inGram(part, nutrient));
    }

    /** @param holds how much of a nutrient there is in a container */
    private void add(Limit limit, String name, Function<Nutrient, Expression> holds, Column there) {
        ContainerLimitsRule.add(
                draft,
                Meaning.eachContainer(limit) + "." + name,
                limit,
                holds.apply(limit.measured()),
                limit.scope() == Scope.PER_100_G
                        ? new Expression().plus(holds.apply(Nutrient.COOKED_WEIGHT), Amounts.PER_100_G)
                        : Expression.of(there));
    }

    private static Expression sum(Dish dish, Function<Part, Column> steps, Nutrient nutrient) {
        var sum = new Expression();
        for (Part part : dish.parts()) {
            sum.plus(steps.apply(part), Amounts.inGram(part, nutrient) * part.stepGrams());
        }
        return sum;
    }

    /**
     * Days of an eater between which nothing stops keeping can change places: every rule says the same of them, and what is
     * cooked and bought stays the same. So of all orders of such days one is enough: the number of a dish being its place on the
     * menu, the numbers of a day's containers add up to no more than those of the day after.
     */
    private void orderOfDays(Seat seat) {
        List<Dish> dishes = draft.menu().dishes(seat);
        for (int day = 2; day <= draft.request().days(); day++) {
            int today = day;
            if (dishes.stream().anyMatch(d -> d.keepsUntil(today - 1) && !d.keepsUntil(today))) {
                continue;
            }
            var more = new Expression();
            for (int d = 0; d < dishes.size(); d++) {
                Helping helping = draft.helping(seat, dishes.get(d));
                more.plus(helping.containers(day), d + 1.0).plus(helping.containers(day - 1), -(d + 1.0));
            }
            draft.model().atLeast("order." + seat.eater().id() + ".day" + day, more, 0);
        }
    }
}
