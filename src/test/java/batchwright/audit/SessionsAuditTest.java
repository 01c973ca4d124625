package batchwright.audit;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Food;
import batchwright.food.Lot;
import batchwright.plan.Cooking;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import batchwright.solve.session.LittleSessions;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** A right plan of two sessions, changed in many ways. */
class SessionsAuditTest {
    private final LittleSessions kitchen = new LittleSessions()
            .sells("grain", false, 500, 300)
            .sells("meat", true, 150, 500)
            .dish("stew", "grain", 100, "meat", 50)
            .atHome("grain", 50, 0);
    private final PlanRequest request = kitchen.request(4, 2, false);
    private final Plan honest = LittleSessions.plan(request).best().orElseThrow();

    private List<String> failed(PlanRequest asked, Plan plan) {
        return Audit.of(asked, plan).checks().stream()
                .filter(check -> !check.passed())
                .map(AuditReport.Check::rule)
                .toList();
    }

    private Plan second(UnaryOperator<Session> change) {
        List<Session> sessions = new ArrayList<>(honest.sessions());
        sessions.set(1, change.apply(sessions.get(1)));
        return new Plan(sessions, honest.proof());
    }

    private Session atHome(Session session, String food, int grams) {
        Map<Food, List<Lot>> pantry =
                new LinkedHashMap<>(session.request().kitchen().pantry());
        pantry.put(kitchen.food(food), List.of(Lot.of(BigDecimal.valueOf(grams))));
        var changed = session.request()
                .withKitchen(session.request()
                        .kitchen()
                        .on(session.request().kitchen().cookingDay(), pantry));
        return session.withRequest(changed);
    }

    /** 550 g less 200 g of grain; of 150 g of meat nothing, although 50 g are left. */
    @Test
    void the_honest_plan_passes() {
        assertThat(failed(request, honest)).isEmpty();
        assertThat(honest.sessions().get(1).request().kitchen().pantryGrams(kitchen.food("grain")))
                .isEqualByComparingTo("350");
        assertThat(honest.sessions().get(1).request().kitchen().pantryGrams(kitchen.food("meat")))
                .isEqualByComparingTo("0");
    }

    @Test
    void more_is_carried_over_than_is_left() {
        assertThat(failed(request, second(s -> atHome(s, "grain", 351)))).contains("carried over");
    }

    @Test
    void less_is_carried_over_than_is_left() {
        assertThat(failed(request, second(s -> atHome(s, "grain", 349)))).contains("carried over");
    }

    @Test
    void an_opened_pack_of_what_spoils_is_carried_over() {
        assertThat(failed(request, second(s -> atHome(s, "meat", 50)))).contains("carried over");
    }

    @Test
    void more_is_at_home_at_first_than_the_files_say() {
        List<Session> sessions = new ArrayList<>(honest.sessions());
        sessions.set(0, atHome(sessions.get(0), "grain", 100));

        assertThat(failed(request, new Plan(sessions, honest.proof()))).contains("carried over");
    }

    @Test
    void a_session_cooks_on_another_day() {
        assertThat(failed(request, second(s -> s.withFirstDay(2)))).contains("sessions and days");
        assertThat(failed(
                        request,
                        second(s -> s.withRequest(s.request()
                                .withKitchen(s.request()
                                        .kitchen()
                                        .on(
                                                LittleSessions.DAY_1,
                                                s.request().kitchen().pantry()))))))
                .contains("sessions and days");
    }

    @Test
    void a_session_is_missing() {
        assertThat(failed(request, new Plan(honest.sessions().subList(0, 1), honest.proof())))
                .contains("sessions and days", "cost of all sessions");
    }

    @Test
    void a_session_has_other_prices() {
        assertThat(failed(
                        request,
                        second(s -> s.withRequest(
                                s.request().withKitchen(s.request().kitchen().withPacks(Map.of()))))))
                .contains("files of each session");
    }

    @Test
    void the_same_dish_again_although_others_were_asked_for() {
        assertThat(failed(request.withCooking(new Cooking(2, true)), honest)).containsExactly("other dishes next time");
    }

    @Test
    void another_cost_is_stated() {
        var proof = new Proof(honest.cost().plus(new Money(1)), Money.ZERO, 1, Duration.ZERO);

        assertThat(failed(request, new Plan(honest.sessions(), proof))).containsExactly("cost of all sessions");
    }

    @Test
    void more_is_said_to_be_proven_than_it_costs() {
        var proof = new Proof(honest.cost(), honest.cost().plus(new Money(1)), 1, Duration.ZERO);

        assertThat(failed(request, new Plan(honest.sessions(), proof))).containsExactly("cost of all sessions");
    }

    @Test
    void it_costs_more_than_the_budget() {
        var poor = request.withBudget(Optional.of(new Money(1)));

        assertThat(failed(poor, honest)).containsExactly("budget");
    }

    @Test
    void each_session_is_audited_by_itself() {
        Plan nothingBought = second(s -> s.withShopping(List.of()));

        assertThat(failed(request, nothingBought)).contains("session 2: stock", "session 2: shopping list");
    }
}
