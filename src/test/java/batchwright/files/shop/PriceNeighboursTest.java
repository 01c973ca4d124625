package batchwright.files.shop;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FilesInMemory;
import batchwright.text.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips in the starter price list, one at a time: each is found, named and shown where it was made, and nothing else is doubted. */
class PriceNeighboursTest {
    @ParameterizedTest(name = "{0} becomes {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        white_rice,corner market,bag,907,2.19           | white_rice,corner market,bag,907,219            | cents? Then it should be 2.19
        white_rice,corner market,bag,907,2.19           | white_rice,corner market,bag,1,2.19             | kg? Then it should be 1000 g
        white_rice,corner market,bag,907,2.19           | white_rice,corner market,bag,32,2.19            | ounces? Then it should be 907 g
        white_rice,corner market,bag,907,2.19           | white_rice,corner market,bag,907,0.02           | Then it should be 2.00
        quinoa,corner market,bag,454,3.99               | quinoa,corner market,bag,454,399                | cents? Then it should be 3.99
        sardines,corner market,can,106,1.79             | sardines,corner market,can,106,179              | cents? Then it should be 1.79
        cod,corner market,"bag, frozen fillets",680,11.99 | cod,corner market,bag,1,11.99                 | kg? Then it should be 1000 g
        cod,corner market,"bag, frozen fillets",680,11.99 | cod,corner market,bag,11.99,680               | place? Then it should be 680 g for 11.99
        walnuts,corner market,"bag, shelled",454,7.49   | walnuts,corner market,bag,454,749               | cents? Then it should be 7.49
        """)
    void a_slip_is_found(String right, String wrong, String says) {
        FilesInMemory files = FilesInMemory.starter();
        String table = files.text("foods/shop.csv");
        assertThat(table).contains(right);

        List<Problem> found =
                files.with("foods/shop.csv", table.replace(right, wrong)).problems();

        assertThat(found).singleElement().satisfies(problem -> {
            assertThat(problem.isError()).isFalse();
            assertThat(problem.expected()).contains(says);
            assertThat(problem.at().file().line(problem.at().line())).startsWith(wrong);
        });
    }

    /** One wrong pack of three does not make the two right ones look wrong. */
    @Test
    void the_right_packs_are_not_doubted() {
        FilesInMemory files = FilesInMemory.starter();
        String table = files.text("foods/shop.csv") + "white_rice,market hall,sack,9072,1299,USD,2026-11-21,invented\n";

        assertThat(files.with("foods/shop.csv", table).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.wrong()).startsWith("an edible kg costs 143.19"));
    }

    /** The group "other" is a drawer, not a neighbourhood: the same slip is found among vegetables, but not among others. */
    @Test
    void foods_of_the_group_other_are_not_compared() {
        FilesInMemory files = FilesInMemory.starter();
        String dear = files.text("foods/shop.csv").replaceAll("(?m)^(kale,.*?,\\d+),[\\d.]+,USD", "$1,900,USD");
        assertThat(files.with("foods/shop.csv", dear).problems()).hasSize(1);

        String drawer = files.text("foods/catalogue.csv").replace(",vegetable,", ",other,");
        assertThat(files.with("foods/catalogue.csv", drawer).problems()).isEmpty();
    }
}
