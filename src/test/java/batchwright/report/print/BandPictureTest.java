package batchwright.report.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places worked out on paper: 21 places between the brackets for 100 kcal, so 5 kcal from one to the next. */
class BandPictureTest {
    private static final BandPicture PICTURE = new BandPicture(3200, 3250, 3300, 23);

    @ParameterizedTest
    @CsvSource({
        "3200,   [*---------:----------]",
        "3202.4, [*---------:----------]",
        "3202.5, [-*--------:----------]",
        "3250,   [----------*----------]",
        "3300,   [----------:---------*]",
        "3000,   [*---------:----------]",
        "3900,   [----------:---------*]"
    })
    void the_star_stands_where_the_figure_lies(BigDecimal kcal, String picture) {
        assertThat(PICTURE.of(kcal)).isEqualTo(picture);
    }

    @ParameterizedTest
    @CsvSource({"7", "21", "41"})
    void head_and_line_are_equally_long(int columns) {
        var picture = new BandPicture(980, 1010, 1040, Math.max(columns, 9));

        assertThat(picture.head())
                .hasSameSizeAs(picture.empty())
                .startsWith("980")
                .endsWith("1040");
    }
}
