package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Allergen;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.limit.TestTarget;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The little plan asked for otherwise, so that one rule says a little more than the plan keeps. */
class AuditOfTargetsTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("targets")
    void fails_where_it_was_tampered_with(String what, PlanRequest request, Plan plan, Set<String> expected) {
        assertFails(request, plan, expected);
    }

    /** The same plan asked for otherwise, so that one rule says a little more than the plan keeps. */
    static List<Arguments> targets() {
        return List.of(
                asked("energy 1 kcal under", target(1550, 1557, 1600, 90, 20, 50, 20, 380), "energy band"),
                asked("energy 1 kcal over", target(1550, 1500, 1569, 90, 20, 50, 20, 380), "energy band"),
                asked("protein 0.6 g under", target(1550, 1500, 1600, 93, 20, 50, 20, 380), "protein floor"),
                asked("fat 0.4 g under", target(1550, 1500, 1600, 90, 25, 50, 20, 380), "fat band"),
                asked("fat 0.8 g over", target(1550, 1500, 1600, 90, 20, 46, 20, 380), "fat band"),
                asked("fibre 0.5 g under", target(1550, 1500, 1600, 90, 20, 50, 22, 380), "fibre floor"),
                asked("fruit 1 g under", target(1550, 1500, 1600, 90, 20, 50, 20, 391), "fruit and vegetables"),
                asked(
                        "a container 1 kcal under",
                        TestTarget.energy(1550, 1500, 1600)
                                .protein(90)
                                .fat(20, 50)
                                .fibre(20)
                                .fruitVeg(380)
                                .container(581, 650)
                                .containerProtein(30)
                                .target(),
                        "container share"),
                asked(
                        "a container 1 kcal over",
                        TestTarget.energy(1550, 1500, 1600)
                                .protein(90)
                                .fat(20, 50)
                                .fibre(20)
                                .fruitVeg(380)
                                .container(500, 593)
                                .containerProtein(30)
                                .target(),
                        "container share"),
                asked(
                        "a container's protein 0.6 g under",
                        TestTarget.energy(1550, 1500, 1600)
                                .protein(90)
                                .fat(20, 50)
                                .fibre(20)
                                .fruitVeg(380)
                                .container(500, 650)
                                .containerProtein(33)
                                .target(),
                        "container protein"),
                asked("1 kcal under on average", ben(Range.atLeast(1564)), "energy on average"),
                asked("1 kcal over on average", ben(Range.atMost(1562)), "energy on average"),
                one("a day more", days(5), honest(), "eaters and days"),
                one("a dish fewer", dishes(1), honest(), "dish count"),
                one("a cent over the budget", request().withBudget(Optional.of(new Money(3119))), honest(), "budget"),
                one("three containers wanted", wishes(BENS_SEAT, w -> wishes(w, 3)), honest(), "containers a day"),
                one(
                        "an avoided food in a snack",
                        wishes(BENS_SEAT, w -> avoiding(w, Set.of(BANANA), Set.of(), Set.of())),
                        honest(),
                        "avoid"),
                one(
                        "an avoided food in a container",
                        wishes(BENS_SEAT, w -> avoiding(w, Set.of(OATS), Set.of(), Set.of())),
                        honest(),
                        "avoid"),
                one(
                        "an avoided allergen in a container",
                        wishes(BENS_SEAT, w -> avoiding(w, Set.of(), Set.of(Allergen.EGG), Set.of())),
                        honest(),
                        "avoid"),
                one(
                        "an avoided allergen in a staple",
                        on(
                                wishes(ANNAS_SEAT, w -> avoiding(w, Set.of(), Set.of(Allergen.MUSTARD), Set.of())),
                                k -> dishes(
                                        k,
                                        Map.of(
                                                CHICKEN_RICE.id(),
                                                withStaple(CHICKEN_RICE, "mustard seeds"),
                                                EGG_POT.id(),
                                                EGG_POT))),
                        honest(),
                        "avoid"),
                one(
                        "an avoided allergen in what is always eaten",
                        wishes(ANNAS_SEAT, w -> avoiding(w, Set.of(), Set.of(Allergen.MILK), Set.of())),
                        honest(),
                        "avoid"),
                one(
                        "an avoided dish",
                        wishes(ANNAS_SEAT, w -> avoiding(w, Set.of(), Set.of(), Set.of(CHICKEN_RICE))),
                        honest(),
                        "avoid"));
    }

    @Test
    void what_days_are_on_average_is_exact() {
        DayTarget target = ben(Range.between(1563, 1563));

        assertThat(failed(audit(seat(BENS_SEAT, target), seated(target)))).isEmpty();
        assertThat(detail(audit(seat(BENS_SEAT, ben(Range.atLeast(1564))), honest()), "energy on average"))
                .isEqualTo("ben, an average day: energy 1563 kcal, at least 1564 kcal");
    }
}
