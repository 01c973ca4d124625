package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import batchwright.solve.whole.OutsideSolver;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written is read alike by solvers from elsewhere: published models reach their published optima in each. */
class MpsTextTest {
    static Stream<Arguments> casesAndSolvers() throws IOException {
        List<Arguments> all = new ArrayList<>();
        PublishedModels.cases().forEach(given -> {
            for (OutsideSolver solver : OutsideSolver.values()) {
                all.add(Arguments.of(given.get("id").asText(), solver, given));
            }
        });
        return all.stream();
    }

    @ParameterizedTest(name = "{0} by {1}")
    @MethodSource("casesAndSolvers")
    void a_published_model_reaches_its_optimum(String id, OutsideSolver solver, JsonNode given) {
        assumeTrue(solver.isThere(), solver.missing());
        MipModel model = PublishedModels.model(given, new HashMap<>());

        OptionalDouble found = solver.solve(MpsText.of(model, List.of(id)));

        JsonNode expected = given.get("expected");
        if (expected.get("status").asText().equals("infeasible")) {
            assertThat(found).isEmpty();
            return;
        }
        double objective = Double.parseDouble(expected.get("objective").asText());
        double theirs = PublishedModels.maximises(given) ? -found.orElseThrow() : found.orElseThrow();
        assertThat(theirs).isCloseTo(objective, within(1e-6 * Math.max(1, Math.abs(objective))));
    }

    /** By the rules that solvers read alike: each kind of bound and row once, written out by hand. */
    @Test
    void every_kind_of_bound_and_row_is_written_so() {
        var model = new MipModel();
        Column usual = model.column("usual", 0, Double.POSITIVE_INFINITY, false, 0);
        Column free = model.column("free", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false, 0);
        Column whole = model.column("whole", 0, Double.POSITIVE_INFINITY, true, 0);
        Column boxed = model.column("boxed", 2, 7, true, 0);
        Column below = model.column("below", Double.NEGATIVE_INFINITY, -3, false, 0);
        model.column("fixed", 4, 4, false, 0);
        model.row("two sides", new Expression().plus(usual, 0.1 + 0.2).plus(free, -1), -2.5, 4);
        model.row("equal", Expression.of(whole), 3, 3);
        model.atMost("most", Expression.of(boxed), 5);
        model.atLeast("least", Expression.of(below), -1e7);
        model.minimise(new Expression().plus(usual, 1).plus(whole, 125), 0);

        assertThat(MpsText.of(model, List.of("remark"))).isEqualTo("""
                        * remark
                        NAME          PLAN
                        ROWS
                         N  COST
                         G  R0000001
                         E  R0000002
                         L  R0000003
                         G  R0000004
                        COLUMNS
                            C0000001  COST      1
                            C0000001  R0000001  0.3
                            C0000002  COST      0
                            C0000002  R0000001  -1
                            M0000001  'MARKER'                 'INTORG'
                            C0000003  COST      125
                            C0000003  R0000002  1
                            C0000004  COST      0
                            C0000004  R0000003  1
                            M0000002  'MARKER'                 'INTEND'
                            C0000005  COST      0
                            C0000005  R0000004  1
                            C0000006  COST      0
                        RHS
                            RHS       R0000001  -2.5
                            RHS       R0000002  3
                            RHS       R0000003  5
                            RHS       R0000004  -10000000
                        RANGES
                            RNG       R0000001  6.5
                        BOUNDS
                         FR BND       C0000002
                         PL BND       C0000003
                         LO BND       C0000004  2
                         UP BND       C0000004  7
                         MI BND       C0000005
                         UP BND       C0000005  -3
                         FX BND       C0000006  4
                        ENDATA
                        """);
    }

    @Test
    void a_constant_in_the_objective_is_refused() {
        var model = new MipModel();
        model.minimise(Expression.of(3), 0);

        assertThatThrownBy(() -> MpsText.of(model, List.of())).hasMessageContaining("constant");
    }
}
