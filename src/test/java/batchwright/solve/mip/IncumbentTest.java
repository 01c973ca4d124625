package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class IncumbentTest {
    @Test
    void what_costs_as_much_is_of_no_use_and_steps_of_cost_count() {
        var cents = new Incumbent<String>(1, 100);

        assertThat(cents.closes(99.6)).isTrue();
        assertThat(cents.closes(99.4)).isFalse();
        assertThat(cents.roundedUp(98.2)).isEqualTo(99);
        assertThat(cents.cost()).isInfinite();
    }

    @Test
    void only_cheaper_solutions_are_taken() {
        var incumbent = new Incumbent<String>(0, 10);
        incumbent.offer(new Completion.Found<>(10, "as dear"));
        assertThat(incumbent.solution()).isEmpty();
        incumbent.offer(new Completion.Found<>(8, "cheaper"));
        incumbent.offer(new Completion.Found<>(9, "dearer"));

        assertThat(incumbent.solution()).contains("cheaper");
        assertThat(incumbent.cost()).isEqualTo(8);
    }

    @Test
    void a_lower_cutoff_forgets_what_is_dearer() {
        var incumbent = new Incumbent<String>(0, 10);
        incumbent.offer(new Completion.Found<>(8, "cheaper"));
        incumbent.lowerCutoff(9);
        assertThat(incumbent.solution()).contains("cheaper");
        incumbent.lowerCutoff(7);

        assertThat(incumbent.solution()).isEmpty();
        assertThat(incumbent.cutoff()).isEqualTo(7);
    }
}
