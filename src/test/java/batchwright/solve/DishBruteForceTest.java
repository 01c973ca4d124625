package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.audit.AuditReport;
import batchwright.audit.DishAudit;
import batchwright.food.Nutrient;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishAnswer;
import batchwright.plan.DishHint;
import batchwright.plan.DishHint.Kind;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.plan.Plan;
import batchwright.solve.dish.DishSolver;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the solver says of small random requests for one dish is what plain enumeration finds: whether there is an answer, its
 * cost to the cent, how near it comes to the energy asked for, and each figure of what is possible instead.
 */
class DishBruteForceTest {
    /** -Dbatchwright.seeds=3000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 400);

    private static final BigDecimal HAIR = new BigDecimal("0.000001");

    static LongStream seeds() {
        return LongStream.range(0, SEEDS);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds_and_comes_as_near(long seed) {
        agrees(RandomDishes.of(seed));
    }

    /** As much again at hand of what is weighed. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("fewerSeeds")
    void costs_what_enumeration_finds_with_room_to_spare(long seed) {
        DishRequest request = RandomDishes.of(seed);
        agrees(new DishRequest(
                request.kitchen().with(request.kitchen().shops().withReserve(BigDecimal.ONE)),
                request.dish(),
                request.containers(),
                request.wish(),
                request.pantry(),
                request.budget(),
                request.patience()));
    }

    static LongStream fewerSeeds() {
        return LongStream.range(40_000, 40_000 + SEEDS / 8);
    }

    private static void agrees(DishRequest request) {
        DishAnswer answer = new DishSolver().fill(request);

        Optional<EveryContainer.Way> best = EveryContainer.best(request);
        assertThat(answer.status())
                .isEqualTo(best.isPresent() ? DishAnswer.Status.FILLED : DishAnswer.Status.NOT_POSSIBLE);
        best.ifPresent(way -> {
            Plan plan = answer.plan().orElseThrow();
            assertThat(plan.cost().minor()).isEqualTo(way.minor());
            assertThat(plan.proof().provenCheapest()).isTrue();
            assertThat(distance(request, plan)).isCloseTo(EveryContainer.distance(request, way), within(HAIR));
            assertThat(DishAudit.of(request, plan).checks()).allMatch(AuditReport.Check::passed);
        });
    }

    private static BigDecimal distance(DishRequest request, Plan plan) {
        var holds = plan.batches().get(0).fills().get(0).perContainer();
        return EveryContainer.distance(
                request,
                new EveryContainer.Way(
                        holds.get(Nutrient.ENERGY), holds.get(Nutrient.PROTEIN), holds.get(Nutrient.FAT), 0));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_is_possible_is_what_enumeration_finds_and_solves(long seed) {
        DishRequest asked = RandomDishes.of(seed);
        DishAnswer answer = new DishSolver().fill(asked);
        if (answer.status() == DishAnswer.Status.FILLED) {
            assertThat(answer.hints()).isEmpty();
            return;
        }
        // Only when nothing that could be asked differently fits the budget, the hints are without it.
        boolean whateverItCosts = asked.budget().isPresent()
                && answer.hints().stream()
                        .filter(h -> h.kind() != Kind.MOST_PROTEIN_FOR_MORE)
                        .flatMap(h -> h.tryThis().stream())
                        .anyMatch(r -> r.budget().isEmpty());
        DishRequest request = whateverItCosts ? asked.withBudget(Optional.empty()) : asked;
        if (whateverItCosts) {
            assertThat(EveryContainer.within(asked)).noneMatch(way -> keepsAllButOne(way, asked.wish()));
            assertThat(EveryContainer.best(request)).isEmpty();
        }

        ContainerWish wish = request.wish();
        List<EveryContainer.Way> ways = EveryContainer.within(request);
        wish.proteinLeastG()
                .ifPresent(ignored -> agrees(
                        answer,
                        Kind.MOST_PROTEIN,
                        most(ways, w -> w.keeps(wish.withProtein(Optional.empty())), EveryContainer.Way::protein)));
        Optional<BigDecimal> within = reached(answer, Kind.MOST_PROTEIN);
        Optional<BigDecimal> forMore = wish.proteinLeastG()
                .filter(ignored -> request.budget().isPresent() && within.isPresent())
                .flatMap(ignored -> most(
                        EveryContainer.within(request.withBudget(Optional.empty())),
                        w -> w.keeps(wish.withProtein(Optional.empty())),
                        EveryContainer.Way::protein))
                .filter(most -> most.subtract(within.orElseThrow()).compareTo(new BigDecimal("0.1")) >= 0);
        agrees(answer, Kind.MOST_PROTEIN_FOR_MORE, forMore);
        wish.fatMostG()
                .ifPresent(ignored -> agrees(
                        answer,
                        Kind.LEAST_FAT,
                        least(ways, w -> w.keeps(wish.withFat(Optional.empty())), EveryContainer.Way::fat)));
        wish.energy().ifPresent(band -> {
            Predicate<EveryContainer.Way> others = w -> w.keeps(wish.withEnergy(Optional.empty()));
            agrees(
                    answer,
                    Kind.ENERGY_ABOVE,
                    least(ways, others.and(w -> w.kcal().compareTo(band.mostKcal()) >= 0), EveryContainer.Way::kcal));
            agrees(
                    answer,
                    Kind.ENERGY_BELOW,
                    most(ways, others.and(w -> w.kcal().compareTo(band.leastKcal()) <= 0), EveryContainer.Way::kcal));
        });
        agrees(
                answer,
                Kind.BUDGET,
                EveryContainer.best(request.withBudget(Optional.empty())).map(w -> BigDecimal.valueOf(w.minor())));
        agrees(
                answer,
                Kind.CONTAINERS,
                LongStream.rangeClosed(1, request.containers())
                        .filter(n -> EveryContainer.best(request.withContainers((int) n))
                                .isPresent())
                        .mapToObj(BigDecimal::valueOf)
                        .max(Comparator.naturalOrder()));
        for (DishHint hint : answer.hints()) {
            hint.tryThis().ifPresent(other -> {
                assertThat(EveryContainer.best(other)).as(hint.kind().name()).isPresent();
                assertThat(new DishSolver().fill(other).status()).isEqualTo(DishAnswer.Status.FILLED);
            });
            assertThat(hint.tryThis().isPresent()).isEqualTo(hint.kind() != Kind.NOT_SOLD);
        }
    }

    private static boolean keepsAllButOne(EveryContainer.Way way, ContainerWish wish) {
        return way.keeps(wish.withEnergy(Optional.empty()))
                || way.keeps(wish.withProtein(Optional.empty()))
                || way.keeps(wish.withFat(Optional.empty()));
    }

    /** A little less asked for than what is to be tried is still impossible. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void what_is_to_be_tried_asks_for_no_more_than_needed(long seed) {
        DishRequest asked = RandomDishes.of(seed);
        for (DishHint hint : new DishSolver().fill(asked).hints()) {
            DishRequest request = asked.withBudget(hint.tryThis().flatMap(DishRequest::budget));
            ContainerWish wish = asked.wish();
            Optional<ContainerWish> more = switch (hint.kind()) {
                case MOST_PROTEIN, MOST_PROTEIN_FOR_MORE ->
                    hint.tryThis()
                            .flatMap(r -> r.wish().proteinLeastG())
                            .map(g -> wish.withProtein(Optional.of(g.add(BigDecimal.ONE))));
                case LEAST_FAT ->
                    hint.tryThis()
                            .flatMap(r -> r.wish().fatMostG())
                            .map(g -> wish.withFat(Optional.of(g.subtract(BigDecimal.ONE))));
                case ENERGY_ABOVE ->
                    Optional.of(band(wish.energy().orElseThrow().mostKcal(), whole(hint, RoundingMode.CEILING, -1)))
                            .flatMap(wishes -> wishes.map(b -> wish.withEnergy(Optional.of(b))));
                case ENERGY_BELOW ->
                    Optional.of(band(
                                    whole(hint, RoundingMode.FLOOR, 1),
                                    wish.energy().orElseThrow().leastKcal()))
                            .flatMap(wishes -> wishes.map(b -> wish.withEnergy(Optional.of(b))));
                default -> Optional.empty();
            };
            more.ifPresent(other -> assertThat(
                            new DishSolver().fill(request.withWish(other)).status())
                    .as(hint.kind().name())
                    .isEqualTo(DishAnswer.Status.NOT_POSSIBLE));
        }
    }

    private static BigDecimal whole(DishHint hint, RoundingMode rounding, int further) {
        return hint.reached().setScale(0, rounding).add(BigDecimal.valueOf(further));
    }

    private static Optional<EnergyBand> band(BigDecimal least, BigDecimal most) {
        return least.compareTo(most) <= 0 ? Optional.of(EnergyBand.between(least, most)) : Optional.empty();
    }

    private static void agrees(DishAnswer answer, Kind kind, Optional<BigDecimal> enumerated) {
        Optional<BigDecimal> said = reached(answer, kind);
        assertThat(said.isPresent()).as(kind.name()).isEqualTo(enumerated.isPresent());
        enumerated.ifPresent(
                value -> assertThat(said.orElseThrow()).as(kind.name()).isCloseTo(value, within(HAIR)));
    }

    private static Optional<BigDecimal> reached(DishAnswer answer, Kind kind) {
        return answer.hints().stream()
                .filter(h -> h.kind() == kind)
                .map(DishHint::reached)
                .findFirst();
    }

    private static Optional<BigDecimal> most(
            List<EveryContainer.Way> ways,
            Predicate<EveryContainer.Way> which,
            Function<EveryContainer.Way, BigDecimal> what) {
        return ways.stream().filter(which).map(what).max(Comparator.naturalOrder());
    }

    private static Optional<BigDecimal> least(
            List<EveryContainer.Way> ways,
            Predicate<EveryContainer.Way> which,
            Function<EveryContainer.Way, BigDecimal> what) {
        return ways.stream().filter(which).map(what).min(Comparator.naturalOrder());
    }

    /** Neither kind of answer is rare. */
    @Test
    void about_half_of_the_requests_are_possible() {
        long possible = seeds().filter(
                        seed -> EveryContainer.best(RandomDishes.of(seed)).isPresent())
                .count();

        assertThat(possible).isBetween(SEEDS / 4, SEEDS * 3 / 4);
    }
}
