package batchwright.report.print;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShowTest {
    private static final Nutrients KNOWN = Nutrients.of(Map.of(Nutrient.FIBRE, new BigDecimal("82.6")));
    private static final Nutrients NOT_ALL = KNOWN.plus(Nutrients.of(Map.of()));

    @Test
    void what_is_not_known_of_all_foods_is_at_least_so_much() {
        assertThat(Show.amount(KNOWN, Nutrient.FIBRE)).isEqualTo("83");
        assertThat(Show.amount(NOT_ALL, Nutrient.FIBRE)).isEqualTo("at least 83");
        assertThat(Show.cell(KNOWN, Nutrient.FIBRE)).isEqualTo("83");
        assertThat(Show.cell(NOT_ALL, Nutrient.FIBRE)).isEqualTo(">=83");
        assertThat(Show.difference(KNOWN, Nutrient.FIBRE, 46)).isEqualTo("+37");
        assertThat(Show.difference(NOT_ALL, Nutrient.FIBRE, 90)).isEqualTo(">=-7");
    }

    @Test
    void the_mark_is_explained_where_it_stands_and_only_there() {
        var plain = new TextTable("").right("fibre").row("83");
        var marked = new TextTable("").right("fibre").row(">=83");
        var page = new Page();

        Show.atLeastNote(page, plain);
        assertThat(page.toString()).isEmpty();
        Show.atLeastNote(page, marked);
        assertThat(page.toString()).contains(">= means at least");
    }
}
