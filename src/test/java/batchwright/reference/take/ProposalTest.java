package batchwright.reference.take;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Allergen;
import batchwright.food.origin.OriginList;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Measure;
import batchwright.reference.Sr28Measures;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is proposed for well-known foods. */
class ProposalTest {
    private static final Sr28 TABLE = Sr28.load();

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
        20031 | millet            | millet, raw                                      | grain
        20044 | white_rice        | white rice, long-grain, regular, raw, enriched   | grain
        01009 | cheddar_cheese    | cheddar cheese                                   | dairy
        12061 | almonds           | almonds                                          | nut_seed
        16014 | black_beans       | black beans, mature seeds, raw                   | legume
        05062 | chicken_breast    | chicken breast, broiler or fryers, skinless, boneless, meat only, raw | meat
        15236 | atlantic_salmon   | Atlantic salmon, farmed, raw                     | fish
        04053 | olive_oil         | olive oil, salad or cooking                      | fat_oil
        11090 | broccoli          | broccoli, raw                                    | vegetable
        11507 | sweet_potato      | sweet potato, raw, unprepared                    | starchy_vegetable
        09040 | bananas           | bananas, raw                                     | fruit
        01123 | egg_whole         | egg whole, raw, fresh                            | egg
        """)
    void id_name_and_group(String ndb, String id, String name, String group) {
        Proposal proposal = of(ndb);

        assertThat(proposal.id()).isEqualTo(id);
        assertThat(proposal.name()).isEqualTo(name);
        assertThat(proposal.group()).isEqualTo(group);
    }

    @Test
    void an_id_that_is_taken_gets_a_number() {
        Sr28Food millet = TABLE.food("20031").orElseThrow();

        assertThat(Proposal.of(millet, Set.of("millet", "millet_2")::contains).id())
                .isEqualTo("millet_3");
    }

    /** Foods that hold the allergen by what they are (Regulation (EU) 1169/2011, Annex II; FALCPA 2004, FASTER Act 2021). */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
        01077, milk
        01001, milk
        01026, milk
        01256, milk
        19120, milk soy
        01123, egg
        01124, egg
        20109, egg wheat gluten
        18060, gluten
        18069, wheat gluten
        20120, wheat gluten
        20081, wheat gluten
        20028, wheat gluten
        08120, gluten
        20005, gluten
        15236, fish
        15121, fish
        15149, crustacean
        15139, crustacean
        15164, mollusc
        15157, mollusc
        12061, tree_nut
        12155, tree_nut
        16087, peanut
        16098, peanut
        16426, soy
        16123, soy wheat gluten
        16108, soy
        12023, sesame
        12166, sesame
        11143, celery
        02046, mustard
        16076, lupin
        09032, sulphite
        21299, milk wheat gluten
        21469, wheat gluten
        06166, milk wheat
        36618, soy wheat
        21140, egg
        22915, milk wheat gluten
        """)
    void allergens_of_obvious_foods(String ndb, String allergens) {
        Sr28Food food = TABLE.food(ndb).orElseThrow(() -> new AssertionError(ndb));

        assertThat(ids(of(ndb).allergens())).as(food.description()).contains(allergens.split(" ", -1));
    }

    /** Where a word of the description means something else. */
    @ParameterizedTest
    @CsvSource({
        "12118, milk",
        "16098, milk",
        "11209, egg",
        "11485, milk",
        "20133, wheat",
        "20008, wheat",
        "11238, mollusc",
        "18363, wheat",
        "20061, wheat",
        "11352, milk",
        "05062, mollusc",
        "04053, soy"
    })
    void words_that_mean_something_else(String ndb, String allergen) {
        Sr28Food food = TABLE.food(ndb).orElseThrow(() -> new AssertionError(ndb));

        assertThat(ids(of(ndb).allergens())).as(food.description()).doesNotContain(allergen);
    }

    @Test
    void gluten_free_bread_has_no_wheat() {
        assertThat(ids(of("28336").allergens()))
                .doesNotContain("wheat", "gluten")
                .contains("soy");
    }

    /** In these groups of the source the whole group holds an allergen. */
    @Test
    void no_food_of_such_a_group_is_without() {
        for (Sr28Food food : TABLE.foods()) {
            Set<Allergen> allergens = Proposal.of(food, id -> false).allergens();
            if (food.group().equals("Dairy and Egg Products")) {
                assertThat(allergens).as(food.toString()).containsAnyOf(Allergen.MILK, Allergen.EGG);
            }
            if (food.description().startsWith("Fish, ")) {
                assertThat(allergens).as(food.toString()).contains(Allergen.FISH);
            }
            if (food.description().startsWith("Peanut")) {
                assertThat(allergens).as(food.toString()).contains(Allergen.PEANUT);
            }
            if (food.words().contains("wheat") && !food.description().contains("gluten-free")) {
                assertThat(allergens).as(food.toString()).contains(Allergen.GLUTEN);
            }
        }
    }

    @Test
    void every_guess_is_named() {
        assertThat(of("20031").guesses()).anyMatch(g -> g.startsWith("allergens: none seen"));
        assertThat(of("22905").guesses()).anyMatch(g -> g.contains("many ingredients"));
        assertThat(of("01009").guesses()).anyMatch(g -> g.startsWith("allergens: milk, guessed"));
        assertThat(of("15236").guesses()).anyMatch(g -> g.startsWith("fruit_veg no"));
        assertThat(of("25062").guesses()).anyMatch(g -> g.startsWith("group "));
    }

    @Test
    void measures_of_one_and_of_several() {
        assertThat(measures("20031")).containsExactly("millet,cup,200,,SR28 seq 1");
        assertThat(MeasureLines.of("x", List.of(new Sr28Measure("4", ".5", "cup, sliced (about 9)", "45"))))
                .containsExactly("x,cup sliced,90,,SR28 seq 4 divided by .5");
    }

    private static List<String> measures(String ndb) {
        return MeasureLines.of("millet", Sr28Measures.load().of(TABLE.food(ndb).orElseThrow()));
    }

    private static Proposal of(String ndb) {
        return Proposal.of(TABLE.food(ndb).orElseThrow(), id -> false);
    }

    private static Set<String> ids(Set<Allergen> allergens) {
        return allergens.stream().map(Allergen::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Words that mean something else here: an English walnut is no muffin, a chuck eye roll no bread. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
        12155, tree_nut
        12206, tree_nut
        12059, tree_nut
        11007, ''
        11749, ''
        11437, ''
        11475, ''
        11492, ''
        11484, ''
        11940, mustard sulphite
        23404, ''
        09086, ''
        09299, sulphite
        09021, ''
        20001, ''
        20016, ''
        20083, wheat gluten
        02027, ''
        16074, ''
        """)
    void nothing_absurd_is_guessed(String ndb, String allergens) {
        assertThat(Proposal.joined(of(ndb).allergens())).isEqualTo(allergens);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
        20031, none
        12155, none
        23572, beef
        10062, pig
        05062, land_meat
        15236, fish
        15149, crustacean
        15164, mollusc
        01123, egg
        01077, milk lactose?
        01009, milk by_product? lactose?
        20081, gluten_cereal
        08120, ''
        20033, oats?
        06931, ''
        16103, ''
        """)
    void origins_are_guessed_or_left_open(String ndb, String origins) {
        assertThat(Set.of(OriginList.written(of(ndb).origins()).split(" ", -1)))
                .isEqualTo(Set.of(origins.split(" ", -1)));
    }
}
