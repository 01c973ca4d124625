package batchwright.solve.session;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.food.Shops;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sessions worked out on paper: four days, two sessions of two containers each. */
class SessionsPlannerTest {
    /** A container is 100 g of grain and 50 g of meat. Two sessions need 400 g of grain: 3.00, less than two of 200 g. */
    private static LittleSessions grainAndMeat(boolean meatSpoils) {
        return new LittleSessions()
                .sells("grain", false, 400, 300, 200, 200)
                .sells("meat", meatSpoils, 200, 500, 100, 300)
                .dish("stew", "grain", 100, "meat", 50);
    }

    private static Plan planOf(PlanRequest request, PlanResult result) {
        Plan plan = result.best().orElseThrow();
        assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed);
        return plan;
    }

    private static List<Long> costs(Plan plan) {
        return plan.sessions().stream().map(s -> s.cost().minor()).toList();
    }

    /** Meat in two packs of 100 g, 6.00. Each session alone needs 200 g of grain, half of 3.00 at least, and meat for 3.00. */
    @Test
    void what_keeps_is_shared_and_what_spoils_is_bought_each_time() {
        PlanRequest request = grainAndMeat(true).request(4, 2, false);

        PlanResult result = LittleSessions.plan(request);

        assertThat(result).isInstanceOf(PlanResult.Planned.class);
        assertThat(costs(planOf(request, result))).containsExactly(600L, 300L);
        assertThat(result.proof().cost()).isEqualTo(new Money(900));
    }

    /**
     * With a tenth to spare each session needs 110 g of meat, a pack of 200 g for 5.00. Grain: 220 g at hand for the first, 400 g in all
     * and 20 g to spare for the last, so 400 g for 3.00 at first and 200 g for 2.00 then.
     */
    @Test
    void room_to_spare_of_a_session_is_there_for_the_next() {
        PlanRequest without = grainAndMeat(true).request(4, 2, false);
        PlanRequest request =
                without.withKitchen(without.kitchen().with(Shops.FREE.withReserve(new BigDecimal("0.1"))));

        PlanResult result = LittleSessions.plan(request);

        assertThat(costs(planOf(request, result))).containsExactly(800L, 700L);
        assertThat(result.proof().lowerBound()).isLessThanOrEqualTo(new Money(1500));
    }

    /** Each session needs 200 g of grain, so the pack of 500 g for 3.00 is half for it: 3.00 in all, though by weight only 2.40 are used. */
    @Test
    void a_pack_that_every_session_needs_is_proven_to_be_paid_once() {
        PlanRequest request = new LittleSessions()
                .sells("grain", false, 500, 300)
                .sells("meat", true, 100, 300)
                .dish("stew", "grain", 100, "meat", 50)
                .request(4, 2, false);

        PlanResult result = LittleSessions.plan(request);

        assertThat(result).isInstanceOf(PlanResult.Planned.class);
        assertThat(result.proof().lowerBound()).isEqualTo(new Money(900));
    }

    /** 600 g of grain are two packs of 500 g for 3.00; by weight 3.60, a little less the first share of each session. Meat 6.00. */
    private static final PlanRequest TWO_PACKS = new LittleSessions()
            .sells("grain", false, 500, 300)
            .sells("meat", true, 100, 300)
            .dish("stew", "grain", 150, "meat", 50)
            .request(4, 2, false);

    @Test
    void what_is_left_of_the_last_pack_is_not_proven_to_be_needed() {
        PlanResult result = LittleSessions.plan(TWO_PACKS);

        assertThat(result).isInstanceOf(PlanResult.GaveUp.class);
        assertThat(result.proof().cost()).isEqualTo(new Money(1200));
        assertThat(result.proof().lowerBound()).isEqualTo(new Money(960));
    }

    /** Meat that keeps: one pack of 200 g. */
    @Test
    void when_everything_keeps_the_cheapest_is_proven() {
        PlanRequest request = grainAndMeat(false).request(4, 2, false);

        PlanResult result = LittleSessions.plan(request);

        assertThat(result).isInstanceOf(PlanResult.Planned.class);
        assertThat(costs(planOf(request, result))).containsExactly(800L, 0L);
    }

    @Test
    void days_of_the_later_session_are_its_own_and_it_keeps_from_its_cooking_day() {
        // The dish keeps two days and does not freeze: from one session nobody could eat it on day 4.
        Plan plan = planOf(
                grainAndMeat(true).request(4, 2, false),
                LittleSessions.plan(grainAndMeat(true).request(4, 2, false)));

        Session second = plan.sessions().get(1);
        assertThat(second.firstDay()).isEqualTo(3);
        assertThat(second.lastDay()).isEqualTo(4);
        assertThat(second.request().kitchen().cookingDay()).isEqualTo(LittleSessions.DAY_1.plusDays(2));
        assertThat(LittleSessions.plan(grainAndMeat(true).request(4, 1, false))).isInstanceOf(PlanResult.NoPlan.class);
    }

    /** 100 g of meat at home until day 2 serve session 1; session 2 buys 100 g for 3.00. Grain 3.00. */
    @Test
    void what_is_past_its_date_is_not_there_for_the_next_session() {
        PlanRequest request = grainAndMeat(true).atHome("meat", 100, 2).request(4, 2, false);

        assertThat(costs(planOf(request, LittleSessions.plan(request)))).containsExactly(300L, 300L);
    }

    /** 200 g until day 3 serve both. */
    @Test
    void what_is_good_on_the_next_cooking_day_is() {
        PlanRequest request = grainAndMeat(true).atHome("meat", 200, 3).request(4, 2, false);

        assertThat(costs(planOf(request, LittleSessions.plan(request)))).containsExactly(300L, 0L);
    }

    /** Rice is dearer than grain: 4.00 for 200 g. With other dishes each time it must come up once. */
    @Test
    void no_dish_twice_in_a_row_when_that_is_asked() {
        LittleSessions kitchen = new LittleSessions()
                .sells("grain", false, 200, 200)
                .sells("rice", false, 200, 400)
                .dish("porridge", "grain", 100)
                .dish("pilaf", "rice", 100);

        PlanRequest same = kitchen.request(6, 3, false);
        PlanRequest other = kitchen.request(6, 3, true);

        assertThat(costs(planOf(same, LittleSessions.plan(same)))).containsExactly(200L, 200L, 200L);
        assertThat(costs(planOf(other, LittleSessions.plan(other)))).containsExactly(200L, 400L, 200L);
    }

    @Test
    void says_which_session_has_no_plan() {
        PlanResult result = LittleSessions.plan(grainAndMeat(true).request(4, 2, true));

        assertThat(result).isInstanceOf(PlanResult.GaveUp.class);
        assertThat(result.best()).isEmpty();
        assertThat(result.stuck().orElseThrow().firstDay()).isEqualTo(3);
    }

    @Test
    void the_budget_is_for_all_sessions() {
        assertThat(withBudget(TWO_PACKS, 1200).best()).isPresent();
        // Between what is proven and what was found nobody knows; below what is proven there is none.
        assertThat(withBudget(TWO_PACKS, 1000).best()).isEmpty();
        assertThat(withBudget(TWO_PACKS, 1000)).isInstanceOf(PlanResult.GaveUp.class);
        assertThat(withBudget(TWO_PACKS, 959)).isInstanceOf(PlanResult.NoPlan.class);
    }

    private static PlanResult withBudget(PlanRequest request, long minor) {
        return LittleSessions.plan(request.withBudget(Optional.of(new Money(minor))));
    }

    @Test
    void sessions_are_spread_evenly_longer_stretches_first() {
        LittleSessions kitchen = grainAndMeat(true);

        assertThat(days(kitchen.request(14, 2, false))).containsExactly(1, 8);
        assertThat(days(kitchen.request(10, 3, false))).containsExactly(1, 5, 8);
        assertThat(days(kitchen.request(28, 4, false))).containsExactly(1, 8, 15, 22);
        assertThat(days(kitchen.request(5, 5, false))).containsExactly(1, 2, 3, 4, 5);
        assertThat(kitchen.request(10, 3, false).days(1)).isEqualTo(4);
        assertThat(kitchen.request(10, 3, false).days(3)).isEqualTo(3);
    }

    private static List<Integer> days(PlanRequest request) {
        return request.sessions().stream().map(request::firstDay).toList();
    }
}
