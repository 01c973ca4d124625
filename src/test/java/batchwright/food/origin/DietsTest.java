package batchwright.food.origin;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Staple;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Diets as sets of barred origins, and what a name alone tells. */
class DietsTest {
    /**
     * Who eats what. Vegetarian and vegan: definitions of the Vegetarian Society (no part of any dead animal nor a by-product of
     * slaughter; vegan also no milk, egg, honey). Lactose in 100 g: PMC7318541, table 1 (milk 4.9 g, cheddar 0.5 g, parmesan below
     * 0.01 g). Gluten: Regulation (EU) 828/2014, oats only if produced apart.
     */
    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource(textBlock = """
        vegetarian,     land_meat,             NO
        vegetarian,     fish,                  NO
        vegetarian,     milk lactose,          YES
        vegetarian,     milk by_product?,      ASK
        vegetarian,     egg,                   YES
        vegetarian,     by_product,            NO
        vegetarian,     '',                    ASK
        vegan,          milk,                  NO
        vegan,          honey,                 NO
        vegan,          none,                  YES
        pescatarian,    fish,                  YES
        pescatarian,    crustacean,            YES
        pescatarian,    beef,                  NO
        lactose_free,   milk lactose,          NO
        lactose_free,   milk little_lactose,   NO
        lactose_free,   milk,                  YES
        low_lactose,    milk little_lactose,   YES
        lactose-free,   milk lactose?,         ASK
        gluten free,    gluten_cereal,         NO
        gluten_free,    oats,                  ASK
        gluten_free,    none,                  YES
        no_pork,        pig,                   NO
        pork,           by_product,            ASK
        pork,           land_meat,             YES
        no_alcohol,     alcohol?,              ASK
        meat,           pig,                   NO
        meat,           fish,                  YES
        dairy,          milk,                  NO
        shellfish,      mollusc,               NO
        """)
    void who_eats_what(String word, String origins, Diet.Answer answer) {
        assertThat(Diet.byWord(word).orElseThrow().has(OriginList.of(origins).orElseThrow()))
                .isEqualTo(answer);
    }

    /** They would claim more than ingredients can tell. */
    @Test
    void no_word_claims_a_rite() {
        assertThat(Diet.byWord("halal")).isEmpty();
        assertThat(Diet.byWord("kosher")).isEmpty();
        assertThat(Diet.all())
                .allMatch(diet -> !diet.says().isBlank() && !diet.source().isBlank());
    }

    /** Every word once; no diet bars what it asks for; vegan bars all that any vegetarian or pescatarian diet bars. */
    @Test
    void the_table_is_sound() {
        assertThat(Diet.all().stream().flatMap(diet -> diet.words().stream())).doesNotHaveDuplicates();
        for (Diet diet : Diet.all()) {
            Set<Origin> both = EnumSet.noneOf(Origin.class);
            both.addAll(diet.bars());
            both.retainAll(diet.asks());
            assertThat(both).as(diet.name()).isEmpty();
        }
        assertThat(Diet.byWord("vegan").orElseThrow().bars())
                .containsAll(Diet.byWord("lacto_vegetarian").orElseThrow().bars())
                .containsAll(Diet.byWord("ovo_vegetarian").orElseThrow().bars())
                .containsAll(Diet.byWord("pescatarian").orElseThrow().bars());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
        salt,               none
        ground cumin,       none
        rice vinegar,       none
        vinegar,            alcohol? gluten_cereal?
        vanilla,            alcohol?
        worcestershire sauce, fish gluten_cereal?
        chicken stock,      land_meat milk? lactose? gluten_cereal?
        vegan butter,       milk? lactose?
        butter,             milk lactose
        cream of tartar,    none
        my spicy secret,    ''
        """)
    void what_a_staple_s_name_tells(String name, String origins) {
        assertThat(OriginList.written(Staple.of(name).origins())).isEqualTo(origins);
    }

    @Test
    void origins_are_read_as_they_are_written() {
        for (String text : Set.of("none", "", "beef milk?", "land_meat beef? pig?")) {
            assertThat(OriginList.of(text).map(OriginList::written)).contains(text);
        }
        assertThat(OriginList.of("milk? milk").orElseThrow().doubtful()).isEmpty();
        assertThat(OriginList.of("mlk")).isEmpty();
        assertThat(OriginList.of("none milk")).isEmpty();
    }
}
