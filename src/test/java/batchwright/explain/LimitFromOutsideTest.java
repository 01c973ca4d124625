package batchwright.explain;

import static batchwright.explain.LittleKitchen.EASY;
import static batchwright.explain.LittleKitchen.request;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import batchwright.answer.Asked;
import batchwright.answer.AuditedPlan;
import batchwright.answer.PlanAnswer;
import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.explain.cost.Insight;
import batchwright.explain.cost.RuleCost;
import batchwright.explain.cost.WhyFinder;
import batchwright.food.Nutrient;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.limit.TestTarget;
import batchwright.needs.Needs;
import batchwright.needs.NeedsCalculator;
import batchwright.needs.target.Targets;
import batchwright.plan.Clash;
import batchwright.plan.Clashes;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Seat;
import batchwright.report.plan.PlanJson;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Commands;
import batchwright.solve.BatchPlanner;
import batchwright.solve.whole.WholeModel;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * Two limits that the program does not know, put into a target as the program puts its own: what a day may hold of sodium, and
 * what days hold of carbohydrate on average. A gram of meat is 1 kcal, 1 mg of sodium and 0.12 g of carbohydrate, so that of
 * 690 to 710 kcal a day only 700 keep both.
 */
class LimitFromOutsideTest {
    private static final Duration EIGHT_SECONDS = Duration.ofSeconds(8);

    private static final Limit SODIUM =
            TestTarget.limit("sodium ceiling", Scope.DAY, Nutrient.SODIUM).with(Range.atMost(700));
    private static final Limit CARBOHYDRATE = TestTarget.limit(
                    "carbohydrate on average", Scope.MEAN_OF_DAYS, Nutrient.CARBOHYDRATE)
            .with(Range.atLeast(84));
    private static final PlanRequest ASKED = request(EASY.and(SODIUM).and(CARBOHYDRATE));
    private static final PlanRequest TOO_LITTLE =
            request(EASY.and(SODIUM.with(Range.atMost(690))).and(CARBOHYDRATE));

    private static Plan plan() {
        return new BatchPlanner().plan(ASKED).best().orElseThrow();
    }

    @Test
    void the_plan_keeps_them() {
        Plan plan = plan();

        assertThat(plan.eaters().get(0).days())
                .extracting(day ->
                        plan.first().totals(ASKED.seats().get(0).eater(), day).get(Nutrient.SODIUM))
                .allSatisfy(mg -> assertThat(mg).isEqualByComparingTo("700"));
    }

    @Test
    void each_is_a_row_of_the_model_with_its_name() {
        WholeModel model = WholeModel.of(ASKED);

        assertThat(model.model().rowNames()).contains("sodium.ann.day1", "sodium.ann.day2", "mean_carbohydrate.ann");
        assertThat(model.names())
                .contains(
                        "row,sodium.ann.day2,sodium ceiling of the day,mg",
                        "row,mean_carbohydrate.ann,\"carbohydrate on average, over all days\",g");
    }

    @Test
    void each_is_a_check_of_the_audit() {
        Plan plan = plan();

        assertThat(Audit.of(ASKED, plan).checks())
                .filteredOn(AuditReport.Check::passed)
                .extracting(AuditReport.Check::rule)
                .contains("sodium ceiling", "carbohydrate on average");
        assertThat(Audit.of(TOO_LITTLE, plan).checks())
                .filteredOn(check -> check.rule().equals("sodium ceiling"))
                .extracting(AuditReport.Check::detail)
                .containsExactly(
                        "Ann, day 1: sodium 700 mg, at most 690 mg; Ann, day 2: sodium 700 mg, at most 690 mg");
    }

    @Test
    void each_is_named_in_a_clash_and_nobody_can_change_it() {
        assertThat(new ClashFinder(new BatchPlanner(), EIGHT_SECONDS)
                        .clashes(TOO_LITTLE, Proof.NONE)
                        .all())
                .extracting(Clash::rule, Clash::says, Clash::isCured)
                .containsExactlyInAnyOrder(
                        tuple("sodium ceiling", "each day of Ann holds at most 690 mg of sodium", false),
                        tuple(
                                "carbohydrate on average",
                                "an average day of Ann holds at least 84 g of carbohydrate",
                                false));
    }

    @Test
    void what_each_costs_is_asked() {
        assertThat(new WhyFinder(new BatchPlanner()).why(ASKED, plan()).rules())
                .extracting(RuleCost::rule, RuleCost::now)
                .contains(tuple("sodium ceiling, mg", "<=700"), tuple("carbohydrate on average, g", "84"));
    }

    @Test
    void text_and_json_show_them() throws IOException {
        PlanAnswer answer = answer();

        assertThat(PlanText.of(answer, new Commands(""), false, 80))
                .contains("<=700")
                .contains("An average day holds at least 84 g of carbohydrate.");
        JsonNode eater =
                new ObjectMapper().readTree(PlanJson.of(answer)).get("eaters").get(0);
        assertThat(eater.get("targets").get("sodium_mg").get("max").asInt()).isEqualTo(700);
        assertThat(eater.get("targets").get("mean_carbohydrate_g").get("min").asInt())
                .isEqualTo(84);
        assertThat(StreamSupport.stream(eater.get("limits").spliterator(), false))
                .extracting(
                        limit -> limit.get("rule").asText(),
                        limit -> limit.get("scope").asText())
                .contains(tuple("sodium ceiling", "day"), tuple("carbohydrate on average", "mean_of_days"));
    }

    private static PlanAnswer answer() {
        Plan plan = plan();
        return new PlanAnswer(
                new Asked(
                        ASKED.kitchen(),
                        List.of("ann"),
                        List.of(needs(ASKED.seats().get(0))),
                        ASKED.days(),
                        Optional.empty(),
                        1,
                        false),
                PlanAnswer.Status.PLANNED,
                plan.proof(),
                Optional.of(new AuditedPlan(plan, Audit.of(ASKED, plan))),
                Clashes.NONE,
                Optional.empty(),
                Insight.NONE);
    }

    /** As worked out, but for the target. */
    private static Needs needs(Seat seat) {
        Needs needs = NeedsCalculator.needsOf(seat.eater());
        return new Needs(
                needs.eater(),
                needs.bodyFat(),
                needs.holding(),
                needs.goal(),
                needs.targets().map(targets -> new Targets(seat.target(), targets.protein(), targets.carbohydrate())),
                needs.cautions());
    }
}
