package batchwright.app.proof;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.proof.PlanProof;
import batchwright.audit.proof.PlanProof.Leaf;
import batchwright.audit.proof.PlanProof.Part;
import batchwright.audit.proof.PlanProof.Split;
import batchwright.audit.proof.PlanProof.Tree;
import batchwright.audit.proof.ProofCheck;
import batchwright.food.Contents;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import batchwright.solve.RandomProblems;
import batchwright.solve.mip.Stop;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A right proof is changed in one place, or held against another kitchen; then it does not hold. */
class TamperedProofTest {
    /** A request whose proof has several parts, and a split in the part that costs least. */
    private static final PlanRequest REQUEST = LongStream.range(230_000, 230_200)
            .mapToObj(RandomProblems::of)
            .filter(request -> proof(request).parts().size() > 2)
            .filter(request -> proof(request).boundMinor() < 1_000_000)
            .filter(request -> proof(request).parts().stream().anyMatch(part -> part.tree() instanceof Split))
            .findFirst()
            .orElseThrow();

    private static final PlanProof PROOF = proof(REQUEST);

    private static PlanProof proof(PlanRequest request) {
        return ProveTotals.of(request, 1_000_000, Stop.NEVER);
    }

    private static Optional<String> wrong(PlanRequest request, PlanProof proof) {
        return ProofCheck.of(request, proof).wrong();
    }

    private static PlanProof with(List<Part> parts) {
        return new PlanProof(PROOF.boundMinor(), parts);
    }

    /** Every leaf of every part. */
    private static PlanProof leaves(UnaryOperator<Map<String, BigDecimal>> change) {
        return leaves(PROOF, change);
    }

    private static PlanProof leaves(PlanProof proof, UnaryOperator<Map<String, BigDecimal>> change) {
        return new PlanProof(
                proof.boundMinor(),
                proof.parts().stream()
                        .map(part -> new Part(part.with(), part.among(), leaves(part.tree(), change)))
                        .toList());
    }

    private static Tree leaves(Tree tree, UnaryOperator<Map<String, BigDecimal>> change) {
        return tree instanceof Split split
                ? new Split(split.column(), split.at(), leaves(split.low(), change), leaves(split.high(), change))
                : new Leaf(change.apply(new LinkedHashMap<>(((Leaf) tree).multipliers())));
    }

    @Test
    void untouched_it_holds() {
        assertThat(wrong(REQUEST, PROOF)).isEmpty();
    }

    @Test
    void a_bound_of_a_cent_more_is_refused() {
        assertThat(wrong(REQUEST, new PlanProof(PROOF.boundMinor() + 1, PROOF.parts())))
                .hasValueSatisfying(why -> assertThat(why).contains("claimed " + (PROOF.boundMinor() + 1)));
    }

    @Test
    void a_bound_of_a_cent_less_holds() {
        assertThat(wrong(REQUEST, new PlanProof(PROOF.boundMinor() - 1, PROOF.parts())))
                .isEmpty();
    }

    /** Each part is needed, or another holds its sets. */
    @Test
    void a_set_of_dishes_that_is_in_no_part_is_missed() {
        long missed = PROOF.parts().stream()
                .filter(part -> {
                    List<Part> others = new ArrayList<>(PROOF.parts());
                    others.remove(part);
                    return wrong(REQUEST, with(others))
                            .filter(why -> why.startsWith("no part holds"))
                            .isPresent();
                })
                .count();

        assertThat(missed).isGreaterThan(PROOF.parts().size() / 2);
        assertThat(wrong(REQUEST, with(List.of()))).isPresent();
    }

    /** Of several requests: where whole packs alone prove enough, multipliers do not matter. */
    @Test
    void multipliers_that_prove_too_little_are_refused() {
        List<PlanRequest> requests =
                LongStream.range(230_000, 230_012).mapToObj(RandomProblems::of).toList();

        assertThat(refused(requests, m -> m.multiply(new BigDecimal("0.9")))).isPositive();
        assertThat(refused(requests, m -> m.multiply(new BigDecimal("1.1")))).isPositive();
        assertThat(refused(requests, m -> BigDecimal.ZERO)).isPositive();
        assertThat(refused(requests, m -> m)).isZero();
    }

    private static long refused(List<PlanRequest> requests, UnaryOperator<BigDecimal> change) {
        return requests.stream()
                .filter(request -> {
                    PlanProof proof = proof(request);
                    return wrong(request, leaves(proof, all -> {
                                all.replaceAll((row, m) -> change.apply(m));
                                return all;
                            }))
                            .isPresent();
                })
                .count();
    }

    @Test
    void a_multiplier_below_nothing_is_refused() {
        assertThat(wrong(REQUEST, leaves(all -> {
                    all.replaceAll((row, m) -> m.negate());
                    return all;
                })))
                .hasValueSatisfying(why -> assertThat(why).contains("below 0"));
    }

    @Test
    void a_multiplier_of_a_million_digits_is_not_added_up() {
        assertThat(wrong(REQUEST, leaves(all -> {
                    all.replaceAll((row, m) -> new BigDecimal("1E+999999"));
                    return all;
                })))
                .hasValueSatisfying(why -> assertThat(why).contains("too many digits"));
    }

    @Test
    void a_row_that_there_is_not_is_refused() {
        assertThat(wrong(REQUEST, leaves(all -> Map.of("a row of my own", BigDecimal.TEN))))
                .hasValueSatisfying(why -> assertThat(why).contains("which there is not"));
    }

    @Test
    void a_dish_that_nobody_knows_is_refused() {
        var part = new Part(Set.of(), Set.of("no_such_dish"), new Leaf(Map.of()));

        assertThat(wrong(REQUEST, with(List.of(part)))).isPresent();
    }

    /** The first side of each split in the place of both. */
    @Test
    void a_side_that_is_left_out_is_missed() {
        PlanProof oneSided = with(PROOF.parts().stream()
                .map(part -> new Part(part.with(), part.among(), low(part.tree())))
                .toList());

        assertThat(wrong(REQUEST, oneSided)).isPresent();
    }

    private static Tree low(Tree tree) {
        return tree instanceof Split split ? low(split.low()) : tree;
    }

    @Test
    void a_split_at_what_is_not_counted_is_refused() {
        String grams = "grams";
        PlanProof split = with(PROOF.parts().stream()
                .map(part -> new Part(part.with(), part.among(), new Split(grams, 1, part.tree(), part.tree())))
                .toList());

        assertThat(wrong(REQUEST, split))
                .hasValueSatisfying(why -> assertThat(why).contains("not counted"));
    }

    @Test
    void a_tree_without_end_is_refused() {
        String dish = REQUEST.kitchen().dishes().keySet().iterator().next();
        Tree deep = new Leaf(Map.of());
        for (int k = 0; k < 1000; k++) {
            deep = new Split("cook." + dish, 0, new Leaf(Map.of()), deep);
        }
        Tree tree = deep;

        assertThat(wrong(
                        REQUEST,
                        with(PROOF.parts().stream()
                                .map(part -> new Part(part.with(), part.among(), tree))
                                .toList())))
                .isPresent();
    }

    /** Prices of the shop as it is now. */
    @Test
    void it_does_not_hold_where_all_is_cheaper() {
        assertThat(wrong(packs(pack -> pack.price().minor() * 9 / 10), PROOF)).isPresent();
    }

    @Test
    void it_holds_where_all_is_dearer() {
        assertThat(wrong(packs(pack -> pack.price().minor() + 1), PROOF)).isEmpty();
    }

    private static PlanRequest packs(java.util.function.ToLongFunction<Pack> price) {
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        REQUEST.kitchen()
                .packs()
                .forEach((food, sold) -> packs.put(
                        food,
                        sold.stream()
                                .map(p -> new Pack(
                                        p.food(),
                                        p.shop(),
                                        p.label(),
                                        Contents.of(p.grams()),
                                        new Money(price.applyAsLong(p)),
                                        Optional.empty(),
                                        p.seen(),
                                        p.note()))
                                .toList()));
        return REQUEST.withKitchen(REQUEST.kitchen().withPacks(packs));
    }
}
