package batchwright.book;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.book.Event.Bought;
import batchwright.book.KeptPlan.Kept;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptPurchase;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** What of a list is taken, by the book; worked out on paper. */
class ShoppingSoFarTest {
    private static final SourceFile BOOK = new SourceFile("profiles/book.txt", List.of());
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);

    private static KeptPlan plan(LocalDate cooks, int number, int bookLine, KeptPurchase... lines) {
        return new KeptPlan(
                cooks,
                new Kept(number, bookLine, OptionalLong.empty()),
                3,
                List.of(),
                List.of(new KeptBatch(1, "ragu", List.of(), List.of(), List.of(), List.of())),
                List.of(lines),
                List.of());
    }

    private static KeptPurchase line(String food, int packs, int grams, long cost) {
        return new KeptPurchase(1, food, packs, BigDecimal.valueOf(grams), cost, "corner market", "bag");
    }

    private static Entry bought(int line, LocalDate day, String food, int packs, int grams, String price) {
        return new Entry(
                new Span(BOOK, line, 1, 1),
                day,
                new Bought(packs, BigDecimal.valueOf(grams), food, Optional.of(new BigDecimal(price)), Optional.empty()));
    }

    private static ShoppingSoFar soFar(KeptPlan plan, Entry... entries) {
        return ShoppingSoFar.of(plan, new Book(Arrays.asList(entries)));
    }

    @Test
    void what_was_bought_as_planned_is_taken_and_off_what_is_left_to_pay() {
        ShoppingSoFar soFar = soFar(
                plan(DAY, 1, 0, line("rice", 2, 500, 398), line("beans", 1, 454, 199)), bought(2, DAY, "rice", 2, 500, "3.98"));

        assertThat(soFar.lines()).extracting(ShoppingSoFar.Line::isTaken).containsExactly(true, false);
        assertThat(soFar.leftToPayMinor()).isEqualTo(199);
        assertThat(soFar.paid()).isEqualByComparingTo("3.98");
    }

    @Test
    void what_was_bought_before_the_plan_was_kept_is_stock_of_it() {
        KeptPlan plan = plan(DAY, 1, 7, line("rice", 2, 500, 398));

        assertThat(soFar(plan, bought(7, DAY, "rice", 2, 500, "3.98")).lines().get(0).isTaken())
                .isFalse();
        assertThat(soFar(plan, bought(8, DAY, "rice", 2, 500, "3.98")).lines().get(0).isTaken())
                .isTrue();
    }

    /** 400 of 1000 g; then another 700: 100 more than planned. */
    @Test
    void other_packs_count_in_grams() {
        KeptPlan plan = plan(DAY, 1, 0, line("rice", 2, 500, 398));
        Entry first = bought(2, DAY, "rice", 1, 400, "1.80");

        assertThat(soFar(plan, first).lines().get(0).gramsOver()).isEqualByComparingTo("-600");
        assertThat(soFar(plan, first, bought(3, DAY, "rice", 1, 700, "2.50")).lines().get(0).gramsOver())
                .isEqualByComparingTo("100");
    }

    @Test
    void the_next_session_is_that_of_today_or_later_by_the_plan_that_holds() {
        KeptPlan older = plan(DAY, 1, 0, line("rice", 2, 500, 398));
        KeptPlan newer = plan(DAY, 2, 0, line("beans", 1, 454, 199));
        KeptPlan next = plan(DAY.plusDays(7), 1, 0);
        var plans = new KeptPlans(List.of(older, newer, next));

        assertThat(plans.next(DAY.minusDays(2))).contains(new KeptSession(newer, 1));
        assertThat(plans.next(DAY)).contains(new KeptSession(newer, 1));
        assertThat(plans.next(DAY.plusDays(3))).contains(new KeptSession(next, 1));
        assertThat(plans.next(DAY.plusDays(8))).contains(new KeptSession(next, 1));
        assertThat(plans.next(DAY.plusDays(10))).isEmpty();
        assertThat(plans.of("2026-11-30-1")).contains(older);
    }
}
