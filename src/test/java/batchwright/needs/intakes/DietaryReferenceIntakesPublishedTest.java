package batchwright.needs.intakes;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.needs.TestEater;
import batchwright.needs.target.Guides;
import batchwright.person.Body;
import batchwright.person.Sex;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of the program, cell by cell, beside the published one; a band from its first day to its last. */
class DietaryReferenceIntakesPublishedTest {
    private static final double[][] BANDS = {{19, 25, 30.999}, {31, 40, 50.999}, {51, 60, 70.999}, {71, 95}};

    @ParameterizedTest
    @CsvFileSource(resources = "/published/dietary_reference_intakes.csv", useHeadersInDisplayName = true)
    void every_cell_is_the_published_one(ArgumentsAccessor row) {
        Nutrient nutrient = nutrient(cell(row, 0));
        for (Sex sex : Sex.values()) {
            for (int band = 0; band < BANDS.length; band++) {
                BigDecimal amount = new BigDecimal(cell(row, 2 + band + (sex == Sex.MALE ? 0 : BANDS.length)));
                for (double years : BANDS[band]) {
                    Recommended found = DietaryReferenceIntakes.recommended(nutrient, body(sex, years))
                            .orElseThrow();
                    assertThat(found.amount()).as("%s %s", sex, years).isEqualByComparingTo(amount);
                    assertThat(found.kind()).isEqualTo(Kind.valueOf(cell(row, 1)));
                    assertThat(found.source().text()).containsAnyOf("checked", "from memory");
                    checkLimit(row, DietaryReferenceIntakes.limit(nutrient, body(sex, years)), band);
                }
            }
        }
    }

    private static void checkLimit(ArgumentsAccessor row, Optional<Ceiling> found, int band) {
        assertThat(found.isPresent()).isEqualTo(!cell(row, 10).isEmpty());
        found.ifPresent(limit -> {
            assertThat(limit.kind()).isEqualTo(Kind.valueOf(cell(row, 10)));
            assertThat(limit.amount()).isEqualByComparingTo(cell(row, band < 2 ? 11 : 12));
            assertThat(limit.counts()).isEqualTo(Counts.valueOf(cell(row, 13)));
            assertThat(limit.source().text()).contains("from memory");
        });
    }

    /** The years in which a figure changes, on both sides: NBK545442 and the table of vitamins, as above. */
    @ParameterizedTest
    @CsvSource({
        "MG, MALE, 30.99, 400", "MG, MALE, 31, 420", "MG, FEMALE, 30.99, 310", "MG, FEMALE, 31, 320",
        "FE, FEMALE, 50.99, 18", "FE, FEMALE, 51, 8", "CA, FEMALE, 50.99, 1000", "CA, FEMALE, 51, 1200",
        "CA, MALE, 70.99, 1000", "CA, MALE, 71, 1200", "VITD, FEMALE, 70.99, 15", "VITD, FEMALE, 71, 20"
    })
    void figures_change_with_a_birthday(String tagname, Sex sex, double years, String amount) {
        assertThat(DietaryReferenceIntakes.recommended(nutrient(tagname), body(sex, years))
                        .orElseThrow()
                        .amount())
                .isEqualByComparingTo(amount);
    }

    @ParameterizedTest
    @EnumSource(Nutrient.class)
    void of_people_under_19_the_table_says_nothing(Nutrient nutrient) {
        assertThat(DietaryReferenceIntakes.recommended(nutrient, body(Sex.FEMALE, 18.99)))
                .isEmpty();
        assertThat(DietaryReferenceIntakes.limit(nutrient, body(Sex.FEMALE, 18.99)))
                .isEmpty();
    }

    @Test
    void every_mineral_and_vitamin_of_the_catalogue_has_its_row() {
        var rest = EnumSet.range(Nutrient.SODIUM, Nutrient.FOLATE_DFE);
        rest.remove(Nutrient.FOLATE); // total folate: recommendations count DFE
        assertThat(rest)
                .hasSize(11)
                .allSatisfy(nutrient -> assertThat(DietaryReferenceIntakes.recommended(nutrient, body(Sex.MALE, 40)))
                        .isPresent());
    }

    @Test
    void the_sodium_of_the_guides_is_that_of_the_table() {
        assertThat(DietaryReferenceIntakes.limit(Nutrient.SODIUM, body(Sex.MALE, 40))
                        .orElseThrow()
                        .amount())
                .isEqualByComparingTo(BigDecimal.valueOf(Guides.SODIUM_MOST_MG));
    }

    private static String cell(ArgumentsAccessor row, int column) {
        return Objects.requireNonNullElse(row.getString(column), "");
    }

    private static Body body(Sex sex, double years) {
        return TestEater.body(sex, 70, 170, years);
    }

    private static Nutrient nutrient(String tagname) {
        return Arrays.stream(Nutrient.values())
                .filter(n -> n.tagname().equals(tagname))
                .findFirst()
                .orElseThrow();
    }
}
