package batchwright.page.desk;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.answer.PlanAnswer;
import batchwright.app.InsightWanted;
import batchwright.app.Workspace;
import batchwright.app.WriteStarterFiles;
import batchwright.food.Nutrient;
import batchwright.needs.evidence.Numerals;
import batchwright.page.PageFiles;
import batchwright.person.Eater;
import batchwright.plan.Plan;
import batchwright.plan.TradeOff;
import batchwright.report.why.ProteinStep;
import batchwright.report.why.WhySentences;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A wish is answered quickly, then to the end; nothing is shown that was not audited, and nothing older than what is shown. */
class DeskBoardTest {
    private static final String EATER = "parent-holding";
    private static final long PATIENCE_NANOS = 120_000_000_000L;
    private static final List<String> DISHES = List.of("lentil_ragu.yaml", "turkey_chili.yaml", "chickpea_tagine.yaml");

    private static final InsightWanted PROTEIN = new InsightWanted(false, Optional.of(TradeOff.PROTEIN), false);
    private static final InsightWanted WHY = new InsightWanted(true, Optional.empty(), false);

    private static Workspace kitchen(Path folder) throws IOException {
        new WriteStarterFiles().into(folder);
        try (Stream<Path> dishes = Files.list(folder.resolve("foods/dishes"))) {
            for (Path other : dishes.filter(d -> Files.isRegularFile(d)
                            && !DISHES.contains(d.getFileName().toString()))
                    .toList()) {
                Files.delete(other);
            }
        }
        return new PageFiles(Optional.of(folder), folder, Clock.systemUTC(), Optional.of(LocalDate.of(2026, 11, 30)))
                .now();
    }

    private static DeskWish wish(String budget, String goal, String protein) {
        return new DeskWish(
                List.of(EATER),
                "2",
                budget,
                "2",
                "1",
                DeskWish.USUAL.dishes(),
                Map.of(EATER, new EaterWish(goal, protein, "", Optional.empty())));
    }

    /** Everything that is shown until a wish has its last answer, by stamp. */
    private static List<DeskBoard.Found> shown(DeskBoard board, DeskWish wish, Workspace kitchen)
            throws InterruptedException {
        assertThat(wish.troubles()).isEmpty();
        int before = board.state().found().map(DeskBoard.Found::stamp).orElse(0);
        board.ask(wish, kitchen);
        int number = board.state().number();
        Map<Integer, DeskBoard.Found> all = new TreeMap<>();
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (System.nanoTime() < end) {
            DeskBoard.State now = board.state();
            now.found().filter(found -> found.stamp() > before).ifPresent(found -> all.put(found.stamp(), found));
            if (now.found()
                    .filter(found -> found.number() == number && found.checked())
                    .isPresent()) {
                assertThat(now.working()).isEmpty();
                return new ArrayList<>(all.values());
            }
            Thread.sleep(1);
        }
        throw new AssertionError("no last answer to " + wish);
    }

    private static Optional<Plan> plan(DeskBoard.Found found) {
        return found.outcome().answer().flatMap(PlanAnswer::plan);
    }

    @Test
    void budget_and_protein_move_and_every_plan_shown_keeps_them(@TempDir Path folder) throws Exception {
        Workspace kitchen = kitchen(folder);
        var board = new DeskBoard();
        long quick = 0;
        try {
            for (String budget : List.of("", "45", "3")) {
                for (String protein : List.of("", "1.5", "1.9", "1.6")) {
                    List<DeskBoard.Found> shown = shown(board, wish(budget, "", protein), kitchen);
                    for (DeskBoard.Found found : shown) {
                        PlanAnswer answer = found.outcome().answer().orElseThrow();
                        assertThat(answer.plan().isPresent())
                                .isEqualTo(answer.audit().isPresent());
                        assertThat(answer.audit().stream()).allMatch(audit -> audit.passed());
                        plan(found).ifPresent(plan -> keeps(plan, answer, budget, protein));
                    }
                    DeskBoard.Found last = shown.get(shown.size() - 1);
                    for (DeskBoard.Found found : shown.subList(0, shown.size() - 1)) {
                        assertThat(found.checked()).isFalse();
                        plan(found)
                                .ifPresent(plan -> assertThat(
                                                plan(last).orElseThrow().cost())
                                        .isLessThanOrEqualTo(plan.cost()));
                    }
                    assertThat(plan(last).isPresent()).as("%s", budget).isEqualTo(!budget.equals("3"));
                    quick += shown.stream()
                            .filter(found -> !found.checked() && plan(found).isPresent())
                            .count();
                }
            }
        } finally {
            board.close();
        }
        assertThat(quick).as("moves with a quick answer before the last").isPositive();
    }

    private static void keeps(Plan plan, PlanAnswer answer, String budget, String protein) {
        Eater eater = answer.needs().get(0).eater();
        if (!budget.isEmpty()) {
            assertThat(plan.cost().minor()).isLessThanOrEqualTo(Long.parseLong(budget) * 100);
        }
        if (!protein.isEmpty()) {
            double floor = Double.parseDouble(protein) * eater.body().weight().kg();
            assertThat(plan.averageDay(eater)
                            .orElseThrow()
                            .get(Nutrient.PROTEIN)
                            .doubleValue())
                    .isGreaterThan(floor - 1);
        }
    }

    /** Each point is checked against a search of its own that remembers nothing, at the position that its button sets. */
    @Test
    void points_of_cost_against_protein_are_what_their_sliders_come_to(@TempDir Path folder) throws Exception {
        Workspace kitchen = kitchen(folder);
        var board = new DeskBoard();
        var other = new DeskBoard();
        try {
            assertThat(board.find(PROTEIN)).as("before anything is shown").isFalse();
            shown(board, wish("", "", ""), kitchen);
            assertThat(board.find(PROTEIN)).isTrue();
            DeskBoard.Outcome outcome = settled(board);
            PlanAnswer answer = outcome.answer().orElseThrow();
            assertThat(answer.audit().orElseThrow().passed()).isTrue();
            List<ProteinStep> steps =
                    new ArrayList<>(ProteinStep.all(answer.insight().frontier().orElseThrow(), answer));
            assertThat(steps)
                    .hasSizeGreaterThan(3)
                    .filteredOn(ProteinStep::inForce)
                    .hasSize(1);
            Collections.shuffle(steps, new Random(1));
            for (ProteinStep step : steps.subList(0, 2)) {
                String protein =
                        Numerals.plain(Objects.requireNonNull(step.gramsPerKg().get(EATER)));
                List<DeskBoard.Found> there = shown(other, wish("", "", protein), kitchen);
                assertThat(step.known().proven()).isTrue();
                assertThat(plan(there.get(there.size() - 1)).map(Plan::cost))
                        .as("%s g", step.level())
                        .isEqualTo(step.known().most());
            }
        } finally {
            board.close();
            other.close();
        }
    }

    @Test
    void why_stays_when_protein_is_asked_for_too_and_a_newer_wish_ends_both(@TempDir Path folder) throws Exception {
        Workspace kitchen = kitchen(folder);
        var board = new DeskBoard();
        try {
            shown(board, wish("", "", ""), kitchen);
            assertThat(board.find(WHY)).isTrue();
            PlanAnswer answer = settled(board).answer().orElseThrow();
            assertThat(answer.insight().why()).isPresent();
            var words = new WhySentences(answer.insight().why().orElseThrow(), answer);
            assertThat(words.rules()).isNotEmpty().allMatch(says -> says.endsWith("."));

            assertThat(board.find(PROTEIN)).isTrue();
            assertThat(board.find(PROTEIN)).as("while it works").isFalse();
            List<DeskBoard.Found> shown = shown(board, wish("", "", "1.7"), kitchen);
            assertThat(shown).allMatch(found -> found.number() == board.state().number());
            assertThat(shown.get(shown.size() - 1)
                            .outcome()
                            .answer()
                            .orElseThrow()
                            .insight()
                            .frontier())
                    .isEmpty();
        } finally {
            board.close();
        }
    }

    /** What is shown once nothing is worked out any more. */
    private static DeskBoard.Outcome settled(DeskBoard board) throws InterruptedException {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (board.state().working().isPresent() && System.nanoTime() < end) {
            Thread.sleep(5);
        }
        return board.state().found().orElseThrow().outcome();
    }

    @Test
    void a_goal_that_needs_refuse_is_shown_as_refused_and_as_the_last_word(@TempDir Path folder) throws Exception {
        var board = new DeskBoard();
        try {
            List<DeskBoard.Found> shown = shown(board, wish("", "-1500", ""), kitchen(folder));

            assertThat(shown).hasSize(1);
            assertThat(shown.get(0).outcome().answer().orElseThrow().stoppedByCaution())
                    .isTrue();
            assertThat(plan(shown.get(0))).isEmpty();
        } finally {
            board.close();
        }
    }

    @Test
    void what_was_asked_before_is_never_shown_after_a_newer_wish(@TempDir Path folder) throws Exception {
        Workspace kitchen = kitchen(folder);
        var board = new DeskBoard();
        try {
            for (int move = 0; move < 30; move++) {
                board.ask(wish("", "", "1." + move % 9), kitchen);
            }
            List<DeskBoard.Found> shown = shown(board, wish("", "", "1.7"), kitchen);

            int newest = board.state().number();
            assertThat(shown).last().matches(found -> found.number() == newest);
            assertThat(shown).isSortedAccordingTo((one, next) -> Integer.compare(one.number(), next.number()));
        } finally {
            board.close();
        }
    }

    @Test
    void figures_are_wrong_where_a_profile_would_be(@TempDir Path folder) {
        assertThat(wish("", "2000", "").troubles()).extracting("field").containsExactly("goal-" + EATER);
        assertThat(wish("", "", "9").troubles()).extracting("field").containsExactly("protein-" + EATER);
        assertThat(new EaterWish("", "", "many", Optional.empty()).troubles(EATER))
                .extracting("field")
                .containsExactly("boxes-" + EATER);
        assertThat(wish("", "-300", "1.8").troubles()).isEmpty();
    }
}
