package batchwright.explain;

import static batchwright.explain.LittleKitchen.BAR;
import static batchwright.explain.LittleKitchen.CURRY;
import static batchwright.explain.LittleKitchen.EASY;
import static batchwright.explain.LittleKitchen.MEAT;
import static batchwright.explain.LittleKitchen.STEW;
import static batchwright.explain.LittleKitchen.TWO_BOXES;
import static batchwright.explain.LittleKitchen.dish;
import static batchwright.explain.LittleKitchen.request;
import static batchwright.explain.LittleKitchen.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import batchwright.explain.Oracle.WorkLimits;
import batchwright.food.Allergen;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.origin.Diet;
import batchwright.limit.Range;
import batchwright.limit.TestTarget;
import batchwright.person.Avoided;
import batchwright.person.Wishes;
import batchwright.plan.Clash;
import batchwright.plan.ClashSet;
import batchwright.plan.Clashes;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Remedy;
import batchwright.plan.Watch;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.RemedyText;
import batchwright.solve.BatchPlanner;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;

/** Small requests without a plan; the clashing rules and the smallest changes are worked out on paper. */
class ClashFinderTest {
    private static final Duration EIGHT_SECONDS = Duration.ofSeconds(8);
    private static final Duration MINUTES = Duration.ofMinutes(10);

    private static List<Clash> clashes(PlanRequest request) {
        return clashes(request, Proof.NONE);
    }

    private static List<Clash> clashes(PlanRequest request, Proof proof) {
        return new ClashFinder(new BatchPlanner(), MINUTES)
                .clashes(request, proof)
                .all();
    }

    /** Also asks the planner that each set is smallest, and each cure too. */
    private static List<Clash> checked(PlanRequest request) {
        List<Clash> clashes =
                Checked.cures(request).stream().map(c -> c.clash(true)).toList();
        assertThat(clashes(request)).isEqualTo(clashes);
        return clashes;
    }

    /** Whatever they hold, both containers full are 80 g of protein. A third would need another dish. */
    @Test
    void protein_out_of_reach() {
        var wide = EASY.energy(400, 1000).protein(90);

        assertThat(checked(request(wide)))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(tuple(
                        "protein floor",
                        "each day of Ann holds at least 90 g of protein",
                        "lower it to 80 g",
                        "protein: 1.14 g per kg under target, in profiles/ann.yaml"));
    }

    /** 710 kcal are 71 g of protein; 74 g are 740 kcal, 40 from the aim: 5.72 %. */
    @Test
    void protein_against_energy() {
        assertThat(checked(request(EASY.protein(74))))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(
                        tuple(
                                "protein floor",
                                "each day of Ann holds at least 74 g of protein",
                                "lower it to 71 g",
                                "protein: 1.01 g per kg under target, in profiles/ann.yaml"),
                        tuple(
                                "energy band",
                                "each day of Ann holds 690 to 710 kcal",
                                "widen it to 660 to 740 kcal",
                                "energy_band: 5.72 % under target, in profiles/ann.yaml"));
    }

    /** 71 g of protein in 70 kg are more than 0.83 g per kg; 58 g are not, and no cure goes that low. */
    @Test
    void no_cure_goes_below_the_protein_that_every_adult_needs() {
        var little = TestTarget.energy(580, 570, 580).protein(60);

        assertThat(checked(request(little)))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("protein floor", ""), tuple("energy band", "widen it to 550 to 600 kcal"));
    }

    /** 710 kcal are 14.2 g of fibre; 16 g are 800 kcal, 100 from the aim: 14.29 %. */
    @Test
    void fibre_against_energy() {
        assertThat(checked(request(EASY.fibre(16))))
                .extracting(Clash::rule, Clash::cure, ClashFinderTest::tried)
                .containsExactly(
                        tuple("fibre floor", "lower it to 14 g", "fibre: 14 g under target, in profiles/ann.yaml"),
                        tuple(
                                "energy band",
                                "widen it to 600 to 800 kcal",
                                "energy_band: 14.29 % under target, in profiles/ann.yaml"));
    }

    /** Nothing here is fruit or vegetable. */
    @Test
    void fruit_and_vegetables_out_of_reach() {
        assertThat(checked(request(EASY.fruitVeg(400))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("fruit and vegetables", "lower it to 0 g"));
    }

    /** 690 kcal are 13.8 g of fat; 12 g are 600 kcal, and two bars of 60 kcal have none. */
    @Test
    void fat_against_energy() {
        assertThat(checked(request(EASY.fat(0, 12))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(
                        tuple("snack limits", "allow 2 measures and 2 kinds a day"),
                        tuple("energy band", "widen it to 600 to 800 kcal"),
                        tuple("fat band", ""));
    }

    /** Two containers of at most 340 kcal are 680; two of 320 and a bar are 700. Both ends of the band move; nobody can change the share. */
    @Test
    void container_share_against_energy() {
        assertThat(checked(request(EASY.container(100, 340))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(
                        tuple("snack limits", "allow 1 measure and 1 kind a day"),
                        tuple("energy band", "widen it to 680 to 720 kcal"),
                        tuple("container share", ""));
    }

    /** Days of at most 710 kcal are no more on average: 10 from an aim of 720, 1.39 %; one of 720 is 40 from 680, 5.56 %. */
    @Test
    void energy_on_average_against_energy() {
        assertThat(checked(request(TestTarget.energy(720, 690, 710).mean(Range.atLeast(720)))))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(
                        tuple(
                                "energy on average",
                                "an average day of Ann holds at least 720 kcal",
                                "lower it to 710 kcal",
                                "energy_on_average: 1.39 % under target, in profiles/ann.yaml"),
                        tuple(
                                "energy band",
                                "each day of Ann holds 690 to 710 kcal",
                                "widen it to 680 to 720 kcal",
                                "energy_band: 5.56 % under target, in profiles/ann.yaml"));
    }

    /** The other way round, and 690 is 10 from an aim of 680: 1.48 %. */
    @Test
    void no_more_energy_on_average_against_energy() {
        assertThat(checked(request(TestTarget.energy(680, 690, 710).mean(Range.atMost(680)))))
                .extracting(Clash::rule, Clash::cure, ClashFinderTest::tried)
                .contains(tuple(
                        "energy on average",
                        "raise it to 690 kcal",
                        "energy_on_average: 1.48 % under target, in profiles/ann.yaml"));
    }

    /** 355 g, the most in the band, hold 35.5 g; 38 g are 380 kcal, twice 760. */
    @Test
    void container_protein_against_energy() {
        assertThat(checked(request(EASY.containerProtein(38))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("energy band", "widen it to 640 to 760 kcal"), tuple("container protein", ""));
    }

    /** Three containers take two dishes; two containers take one. */
    @Test
    void dish_count_against_containers_a_day() {
        PlanRequest request = request(2, 1, List.of(STEW, CURRY), seat("ann", TWO_BOXES.withContainersADay(3), EASY));

        assertThat(checked(request))
                .extracting(Clash::rule, Clash::cure, ClashFinderTest::tried)
                .containsExactly(
                        tuple("dish count", "cook up to 2 dishes", "--dishes 2"),
                        tuple("containers a day", "ask for 2 a day", "containers_a_day: 2 in profiles/ann.yaml"));
    }

    @Test
    void keeping() {
        PlanRequest request = request(4, 3, List.of(dish("salad", 2, false, MEAT)), seat("ann", TWO_BOXES, EASY));

        assertThat(checked(request))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(tuple(
                        "keeping",
                        "what does not freeze is eaten within its fridge days: salad by day 2",
                        "plan 2 days instead of 4",
                        "--days 2"));
    }

    /** One day alone would be a batch of one container: fewer days are no way out. */
    @Test
    void keeping_where_fewer_days_do_not_help() {
        PlanRequest request = request(
                2,
                3,
                List.of(dish("salad", 1, false, MEAT)),
                seat("ann", TWO_BOXES.withContainersADay(1), EASY.energy(390, 400)));

        assertThat(checked(request))
                .extracting(Clash::rule, Clash::cure)
                .contains(tuple("keeping", "freeze salad, but only if it is safe and good to eat after freezing"));
    }

    @Test
    void an_avoided_food_is_offered_again() {
        Wishes wishes = TWO_BOXES.withAvoided(Set.of(MEAT), Set.of(), Set.of());

        assertThat(checked(request(2, 3, List.of(STEW), seat("ann", wishes, EASY))))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(tuple(
                        "avoid",
                        "meat never reaches Ann, who may eat 0 of 1 dish",
                        "allow meat again",
                        "avoid without meat, in profiles/ann.yaml"));
    }

    @Test
    void an_allergen_is_never_offered_again() {
        Wishes wishes = TWO_BOXES.withAvoided(Set.of(BAR), Set.of(Allergen.MILK), Set.of());
        Wishes both = TWO_BOXES.withAvoided(Set.of(MEAT), Set.of(Allergen.MILK), Set.of());

        assertThat(checked(request(2, 3, List.of(STEW), seat("ann", wishes, EASY))))
                .extracting(Clash::rule, Clash::cure, Clash::remedy)
                .containsExactly(tuple("avoid", "", Optional.of(new Remedy.OfferAnotherDish())));
        Clashes two = all(request(2, 3, List.of(STEW), seat("ann", both, EASY)));
        assertThat(two.sets()).hasSize(2);
        assertThat(two.all()).extracting(Clash::isCured).containsOnly(false);
        assertThat(two.together()).isEmpty();
    }

    /** Stew is nothing that a vegan eats as far as is known. Bars alone make a plan when two dishes may be cooked. */
    @Test
    void a_diet_is_dropped_when_nothing_else_helps() {
        Diet vegan = Diet.byWord("vegan").orElseThrow();
        Wishes wishes = TWO_BOXES.with(TWO_BOXES.avoided().withDiets(Set.of(vegan)));

        assertThat(checked(request(2, 3, List.of(STEW), seat("ann", wishes, EASY))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple(
                        "avoid", "allow " + vegan.says() + " again, but only if that is no allergy or intolerance"));

        Wishes noBars =
                wishes.with(wishes.avoided().withChecked(Set.of("bar"))).withAvoided(Set.of(BAR), Set.of(), Set.of());
        var bars = dish("bars", 4, true, BAR);
        List<Clash> clashes =
                checked(request(2, 3, List.of(STEW, bars), seat("ann", noBars, TestTarget.energy(400, 390, 410))));
        assertThat(clashes)
                .extracting(Clash::rule, Clash::cure)
                .startsWith(tuple("avoid", "allow bar again"))
                .doesNotContain(tuple(
                        "avoid", "allow " + vegan.says() + " again, but only if that is no allergy or intolerance"));
    }

    /** Full containers are 800 kcal; 60 more make 860. */
    @Test
    void snack_limits_against_energy() {
        var hungry = TestTarget.energy(850, 840, 860);
        PlanRequest request =
                request(2, 3, List.of(STEW), seat("ann", TWO_BOXES.withSnacks(Optional.empty(), 0, 1), hungry));

        assertThat(checked(request))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(
                        tuple(
                                "snack limits",
                                "Ann eats at most 0 measures of snacks a day, of at most 1 kind",
                                "allow 1 measure a day",
                                "measures_a_day: 1 under snacks, in profiles/ann.yaml"),
                        tuple(
                                "energy band",
                                "each day of Ann holds 840 to 860 kcal",
                                "widen it to 800 to 900 kcal",
                                "energy_band: 5.89 % under target, in profiles/ann.yaml"));
    }

    @Test
    void of_two_eaters_the_one_whose_rules_clash_is_named() {
        PlanRequest request =
                request(2, 3, List.of(STEW), seat("ann", TWO_BOXES, EASY), seat("ben", TWO_BOXES, EASY.protein(74)));

        assertThat(checked(request)).extracting(Clash::says).allMatch(says -> says.contains("Ben"));
    }

    /** Either floor is out of reach by itself: both are named, and what both need. Full containers are 80 g of protein, 16 g of fibre. */
    @Test
    void two_clashes_at_once() {
        Clashes clashes = all(request(EASY.energy(400, 1000).protein(90).fibre(20)));

        assertThat(clashes.sets())
                .extracting(set -> set.rules().stream().map(Clash::rule).toList())
                .containsExactlyInAnyOrder(List.of("protein floor"), List.of("fibre floor"));
        assertThat(clashes.together())
                .singleElement(InstanceOfAssertFactories.list(Clash.class))
                .extracting(Clash::rule, Clash::cure)
                .containsExactlyInAnyOrder(
                        tuple("protein floor", "lower it to 80 g"), tuple("fibre floor", "lower it to 16 g"));
    }

    /** 80 g of protein are two containers of 400 g, 1.6 kg in two days: two packs of 1.00. One pack is 50 g a day, too little. */
    @Test
    void what_is_cured_together_may_need_a_larger_budget_besides() {
        PlanRequest request =
                request(EASY.energy(400, 1000).protein(90).fibre(20)).withBudget(Optional.of(new Money(199)));

        assertThat(all(request).together())
                .singleElement(InstanceOfAssertFactories.list(Clash.class))
                .extracting(Clash::rule, Clash::cure)
                .contains(tuple("budget", "raise the budget to 2.00"));
    }

    private static Clashes all(PlanRequest request) {
        return new ClashFinder(new BatchPlanner(), MINUTES).clashes(request, Proof.NONE);
    }

    /** Ann's day is easy, Ben's has more protein than two containers hold: he alone is named. */
    @Test
    void it_is_said_for_whom_a_set_cannot_hold() {
        PlanRequest request = request(
                2,
                3,
                List.of(STEW),
                seat("ann", TWO_BOXES, EASY),
                seat("ben", TWO_BOXES, EASY.energy(400, 1000).protein(90)));

        assertThat(all(request).sets()).extracting(ClashSet::eaters).containsExactly(List.of("Ben"));
        assertThat(all(request(EASY.protein(90))).sets())
                .extracting(ClashSet::eaters)
                .containsExactly(List.of());
    }

    /** Each gets another dish only, and one dish may be cooked: neither is to blame alone. */
    @Test
    void a_set_may_be_that_of_two_eaters_together() {
        PlanRequest request = request(
                2,
                1,
                List.of(STEW, CURRY),
                seat("ann", TWO_BOXES.withAvoided(Set.of(), Set.of(), Set.of(STEW)), EASY),
                seat("ben", TWO_BOXES.withAvoided(Set.of(), Set.of(), Set.of(CURRY)), EASY),
                seat("cleo", TWO_BOXES, EASY));

        assertThat(all(request).sets()).extracting(ClashSet::eaters).containsExactly(List.of("Ann", "Ben"));
    }

    @Test
    void on_one_day_the_last_container_would_be_a_batch_of_one() {
        PlanRequest request = request(1, 3, List.of(STEW, CURRY), seat("ann", TWO_BOXES.withContainersADay(3), EASY));

        assertThat(clashes(request)).singleElement().satisfies(clash -> {
            assertThat(clash.rule()).isEqualTo("containers a day");
            assertThat(clash.says()).contains("3 containers", "a batch fills at least 2");
            assertThat(tried(clash)).isEqualTo("--days 2");
        });
        assertThat(Checked.possible(request.withDays(2))).isEqualTo(Planner.Possible.YES);
    }

    @Test
    void too_few_dishes_for_the_containers() {
        PlanRequest request = request(2, 3, List.of(STEW), seat("ann", TWO_BOXES.withContainersADay(5), EASY));

        assertThat(clashes(request)).singleElement().satisfies(clash -> {
            assertThat(clash.says()).contains("that takes 3 dishes, and 1 can be served");
            assertThat(clash.cure()).isEqualTo("ask for 2 a day");
        });
    }

    @Test
    void nothing_to_cook_or_to_buy() {
        PlanRequest request = request(EASY);
        PlanRequest noDish = request.withKitchen(LittleKitchen.kitchen(List.of(), List.of(MEAT)));
        PlanRequest noPack = request.withKitchen(LittleKitchen.kitchen(List.of(STEW), List.of(BAR)));
        var bar = new Wishes.Always(new Measure(BAR, "piece", BigDecimal.TEN, 0, "invented"), 1);
        var alwaysBar = new Wishes(2, Avoided.NOTHING, List.of(bar), Optional.empty(), 0, 0);
        PlanRequest noBar = request(2, 3, List.of(STEW), seat("ann", alwaysBar, EASY))
                .withKitchen(LittleKitchen.kitchen(List.of(STEW), List.of(MEAT)));

        assertThat(clashes(noDish)).extracting(Clash::says).allMatch(s -> s.contains("there is no dish"));
        assertThat(clashes(noPack)).extracting(Clash::says).allMatch(s -> s.contains("neither at home nor sold: meat"));
        assertThat(clashes(noBar)).extracting(Clash::says).allMatch(s -> s.contains("always eats bar"));
    }

    /** Bars are not sold, and the only dish without them is avoided. */
    @Test
    void an_avoided_dish_is_the_only_one_that_can_be_bought() {
        var bars = dish("bars", 4, true, BAR);
        Wishes noStew = TWO_BOXES.withAvoided(Set.of(), Set.of(), Set.of(STEW));
        PlanRequest request = request(2, 3, List.of(STEW, bars), seat("ann", noStew, EASY));
        PlanRequest noBars = request.withKitchen(LittleKitchen.kitchen(List.of(STEW, bars), List.of(MEAT)));

        assertThat(checked(noBars))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("avoid", "allow stew again"));
    }

    /** Two days of 16 g of fibre are 1.6 kg of stew, two packs of 1.00; one pack has 10 g a day. */
    @Test
    void a_change_has_to_fit_the_budget() {
        PlanRequest request = request(EASY.energy(400, 1000).fibre(20));

        assertThat(clashes(request.withBudget(Optional.of(new Money(200)))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("fibre floor", "lower it to 16 g"));
        assertThat(clashes(request.withBudget(Optional.of(new Money(199)))))
                .extracting(Clash::rule, Clash::cure)
                .containsExactly(tuple("fibre floor", "lower it to 10 g"));
    }

    /** One pack has 50 g of protein a day, which is less than 70 kg need. */
    @Test
    void where_no_change_fits_the_budget_the_budget_is_raised_besides() {
        PlanRequest request = request(EASY.energy(400, 1000).protein(90));

        assertThat(clashes(request.withBudget(Optional.of(new Money(199)))))
                .extracting(Clash::rule, Clash::says, Clash::cure, ClashFinderTest::tried)
                .containsExactly(tuple(
                        "protein floor",
                        "each day of Ann holds at least 90 g of protein",
                        "lower it to 80 g; besides, raise the budget to 2.00",
                        "protein: 1.14 g per kg under target, in profiles/ann.yaml; besides --budget 2.00"));
    }

    /** A single container is no batch; two days with a container each are one pack of 1.00. */
    @Test
    void where_counting_shows_the_cause_the_budget_counts_too() {
        var little = EASY.energy(200, 400);
        PlanRequest request = request(1, 3, List.of(STEW), seat("ann", TWO_BOXES.withContainersADay(1), little));

        assertThat(clashes(request.withBudget(Optional.of(new Money(100)))))
                .extracting(Clash::cure)
                .containsExactly("plan 2 days");
        assertThat(clashes(request.withBudget(Optional.of(new Money(99)))))
                .extracting(Clash::cure)
                .containsExactly("plan 2 days; besides, raise the budget to 1.00");
    }

    /** Two days: bars that must be used on day 1 cannot be eaten on day 2. */
    @Test
    void what_is_always_eaten_spoils() {
        var bar = new Wishes.Always(new Measure(BAR, "piece", BigDecimal.valueOf(100), 3, "invented"), 1);
        var alwaysBar = new Wishes(2, Avoided.NOTHING, List.of(bar), Optional.empty(), 0, 0);
        PlanRequest lasting = request(2, 3, List.of(STEW), seat("ann", alwaysBar, EASY));
        PlanRequest noShop = lasting.withKitchen(LittleKitchen.kitchen(List.of(STEW), List.of(MEAT)));

        assertThat(clashes(barsUntil(noShop, 1))).singleElement().satisfies(clash -> {
            assertThat(clash.rule()).isEqualTo("use by");
            assertThat(clash.says()).contains("always eats bar", "not sold", "spoils before the last day");
        });
        assertThat(Checked.possible(barsUntil(noShop, 2))).isEqualTo(Planner.Possible.YES);
        assertThat(Checked.possible(barsUntil(lasting, 1))).isEqualTo(Planner.Possible.YES);
    }

    private static PlanRequest barsUntil(PlanRequest request, int day) {
        var lot = new Lot(BigDecimal.valueOf(500), Optional.of(LittleKitchen.DAY.plusDays(day - 1L)));
        Kitchen k = request.kitchen();
        return request.withKitchen(new Kitchen(
                k.foods(),
                k.measures(),
                k.yields(),
                k.packs(),
                k.dishes(),
                Map.of(BAR, List.of(lot)),
                k.currency(),
                k.cookingDay()));
    }

    /** 100 g at home and no shop: enough to be on offer, not to cook. No rule that can be loosened is to blame. */
    @Test
    void no_rule_to_blame() {
        var k = request(EASY).kitchen();
        var poor = new Kitchen(
                k.foods(),
                k.measures(),
                k.yields(),
                Map.of(),
                k.dishes(),
                Map.of(MEAT, List.of(Lot.of(BigDecimal.valueOf(100)))),
                Currency.USD,
                k.cookingDay());

        assertThat(clashes(request(EASY).withKitchen(poor)))
                .singleElement()
                .satisfies(clash -> assertThat(clash.says()).startsWith("whatever the targets"));
    }

    /** 1.4 kg of stew take two packs of 1.00; one pack is 500 kcal a day, further from the aim than any profile may allow. */
    @Test
    void a_budget_that_is_too_small_clashes_with_what_makes_the_plan_dear() {
        var proof = new Proof(new Money(200), new Money(200), 1, Duration.ZERO);

        assertThat(clashes(request(EASY).withBudget(Optional.of(new Money(150))), proof))
                .extracting(Clash::rule, Clash::cure, Clash::needed)
                .containsExactly(
                        tuple("budget", "raise the budget to 2.00, the cost of the cheapest plan", true),
                        tuple("energy band", "", true));
    }

    /** 1 kg of stew, one pack, hold 100 g of protein, 50 g a day, of 690 kcal that need not come from stew. */
    @Test
    void protein_is_lowered_to_what_the_budget_buys() {
        var wide = EASY.energy(400, 1000).protein(59);
        var proof = new Proof(new Money(200), new Money(200), 1, Duration.ZERO);
        PlanRequest request = request(wide).withBudget(Optional.of(new Money(199)));

        assertThat(clashes(request, proof)).extracting(Clash::rule).containsExactly("budget", "protein floor");
        assertThat(Checked.possible(request)).isEqualTo(Planner.Possible.NO);
        assertThat(Checked.possible(request.withSeats(List.of(seat("ann", TWO_BOXES, wide.protein(50))))))
                .isEqualTo(Planner.Possible.YES);
    }

    @Test
    void a_budget_that_is_too_small_though_the_cheapest_plan_is_not_known() {
        var proof = new Proof(new Money(200), new Money(180), 1, Duration.ZERO);

        assertThat(clashes(request(EASY).withBudget(Optional.of(new Money(150))), proof)
                        .get(0))
                .satisfies(clash -> {
                    assertThat(clash.rule()).isEqualTo("budget");
                    assertThat(clash.says()).contains("within 1.50", "at least 1.80");
                    assertThat(clash.cure()).contains("2.00", "perhaps less");
                });
    }

    /** A planner that knows nothing and works on until it is told to stop. */
    private static final class Slow implements Planner {
        long done;
        long longest;

        @Override
        public PlanResult plan(PlanRequest request) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Possible possible(PlanRequest request) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Possible possible(PlanRequest request, Watch watch) {
            long work = 0;
            while (!watch.stop(work)) {
                work += MILLION;
            }
            done += work;
            longest = Math.max(longest, work);
            return Possible.UNKNOWN;
        }
    }

    private static final long MILLION = 1_000_000;

    @Test
    void work_is_limited_whatever_the_clock_says() {
        var slow = new Slow();
        var finder = new ClashFinder(slow, () -> 0, MINUTES, new WorkLimits(20 * MILLION, 500 * MILLION));

        Clashes clashes = finder.clashes(request(EASY.protein(74)), Proof.NONE);

        assertThat(clashes.all()).extracting(Clash::rule).contains("protein floor", "energy band");
        assertThat(clashes.all()).extracting(Clash::needed).containsOnly(false);
        assertThat(clashes.all()).extracting(Clash::isCured).containsOnly(false);
        assertThat(clashes.timeEnded()).isFalse();
        assertThat(slow.longest).isBetween(20 * MILLION, 22 * MILLION);
        assertThat(slow.done).isBetween(200 * MILLION, 520 * MILLION);
    }

    /** A planner that knows nothing, on a clock that each question moves by all the patience it was given. */
    @Test
    void only_the_clock_is_said_to_have_ended() {
        var now = new AtomicLong();
        Planner slow = new Planner() {
            @Override
            public PlanResult plan(PlanRequest request) {
                throw new UnsupportedOperationException();
            }

            @Override
            public Possible possible(PlanRequest request) {
                now.addAndGet(request.patience().toNanos());
                return Possible.UNKNOWN;
            }
        };
        var finder = new ClashFinder(slow, now::get, EIGHT_SECONDS, new WorkLimits(20 * MILLION, 500 * MILLION));

        assertThat(finder.clashes(request(EASY.protein(74)), Proof.NONE).timeEnded())
                .isTrue();
        assertThat(now).hasValueLessThanOrEqualTo(EIGHT_SECONDS.toNanos());
    }

    /** A planner that never looks at the clock, and takes a minute for each question. */
    private static final class Deaf implements Planner {
        @Override
        public PlanResult plan(PlanRequest request) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Possible possible(PlanRequest request) {
            LockSupport.parkNanos(Duration.ofMinutes(1).toNanos());
            return Possible.UNKNOWN;
        }
    }

    @Test
    void a_planner_that_does_not_answer_is_not_waited_for() {
        long start = System.nanoTime();

        List<Clash> clashes = new ClashFinder(new Deaf(), EIGHT_SECONDS)
                .clashes(request(EASY.protein(74)), Proof.NONE)
                .all();

        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(10));
        assertThat(clashes).extracting(Clash::needed).containsOnly(false);
    }

    /** A planner that answers only what is easy: it never learns that a little less would not do. */
    @Test
    void a_change_that_may_be_larger_than_needed_is_said_so() {
        Planner unsure = new Planner() {
            @Override
            public PlanResult plan(PlanRequest request) {
                throw new UnsupportedOperationException();
            }

            @Override
            public Possible possible(PlanRequest request) {
                int protein =
                        request.seats().get(0).target().day(Nutrient.PROTEIN).least();
                return protein > 70 && protein < 74 ? Possible.UNKNOWN : new BatchPlanner().possible(request);
            }
        };

        assertThat(new ClashFinder(unsure, EIGHT_SECONDS)
                        .clashes(request(EASY.protein(74)), Proof.NONE)
                        .all())
                .extracting(Clash::cure)
                .contains("lower it to 70 g; a smaller change may do, but none was found");
    }

    @Test
    void the_same_request_has_the_same_clashes() {
        PlanRequest request = request(EASY.protein(74));

        assertThat(clashes(request)).isEqualTo(clashes(request));
    }

    private static String tried(Clash clash) {
        return clash.remedy().map(RemedyText::of).orElse("");
    }
}
