package batchwright.audit;

import static batchwright.audit.AuditCases.*;
import static batchwright.audit.LittlePlan.*;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.plan.Plan;
import org.junit.jupiter.api.Test;

/** The little plan passes every check, and what is recomputed is what was worked out on paper. */
class AuditTest {
    @Test
    void the_honest_plan_passes_every_check() {
        AuditReport report = audit(request(), honest());

        assertThat(failed(report)).isEmpty();
        assertThat(report.passed()).isTrue();
        assertThat(report.checks()).allMatch(check -> check.detail().isEmpty());
    }

    @Test
    void every_rule_and_every_kind_of_printed_number_has_one_check() {
        assertThat(audit(request(), honest()).checks().stream().map(AuditReport.Check::rule))
                .containsExactly(
                        "energy band",
                        "protein floor",
                        "fat band",
                        "fibre floor",
                        "fruit and vegetables",
                        "container share",
                        "container protein",
                        "containers a day",
                        "meals",
                        "part range",
                        "dish count",
                        "hands-on minutes",
                        "snack limits",
                        "snack pairs",
                        "keeping",
                        "avoid",
                        "stock",
                        "one kind",
                        "use by",
                        "budget",
                        "always eaten",
                        "eaters and days",
                        "names in the files",
                        "day totals",
                        "average day",
                        "container contents",
                        "batch ingredients",
                        "cooked weights",
                        "shopping list",
                        "cost");
    }

    /** The table of {@link LittlePlan}, worked out on paper, is what the audit comes to. */
    @Test
    void the_day_recomputed_is_the_one_worked_out_on_paper() {
        Plan plan = honest();
        var day = plan.eaters().get(0).days().get(0);

        Grams recomputed = Evidence.of(request(), plan.first()).eaten().onDay(BEN, day);
        assertThat(recomputed.holds(Nutrient.ENERGY)).isEqualByComparingTo("1570");
        assertThat(recomputed.holds(Nutrient.PROTEIN)).isEqualByComparingTo("92.4");
        assertThat(recomputed.holds(Nutrient.FAT)).isEqualByComparingTo("46.8");
        assertThat(recomputed.holds(Nutrient.FIBRE)).isEqualByComparingTo("21.5");
        assertThat(recomputed.holds(Nutrient.FRUIT_VEG)).isEqualByComparingTo("390");
    }

    /** On paper: Ben's energy (2 x 1570 + 2 x 1556) / 4, fruit and vegetables (2 x 390 + 2 x 540) / 4. */
    @Test
    void the_average_day_is_the_one_worked_out_on_paper() {
        Plan plan = honest();
        Nutrients average = plan.first().averageDay(plan.eaters().get(0));

        assertThat(average.get(Nutrient.ENERGY)).isEqualByComparingTo("1563");
        assertThat(average.get(Nutrient.FRUIT_VEG)).isEqualByComparingTo("465");
        assertThat(plan.first().averageDay(plan.eaters().get(1)).get(Nutrient.PROTEIN))
                .isEqualByComparingTo("47.7");
    }

    @Test
    void a_failure_says_who_when_and_how_much() {
        AuditReport report = audit(seat(BENS_SEAT, target(1550, 1560, 1600, 90, 20, 50, 20, 380)), honest());

        assertThat(detail(report, "energy band"))
                .isEqualTo("ben, day 3: energy 1556 kcal, at least 1560 kcal;"
                        + " ben, day 4: energy 1556 kcal, at least 1560 kcal");
    }
}
