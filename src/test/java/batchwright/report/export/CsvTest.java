package batchwright.report.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 4180, "Common Format and MIME Type for Comma-Separated Values (CSV) Files", section 2. */
class CsvTest {
    /** Rules 1, 3, 5, 6 and 7, with their own examples. */
    @Test
    void lines_end_with_cr_lf_and_quotes_stand_only_where_needed() {
        String table = new Csv("field_name", "other")
                .row("aaa", "bbb")
                .row("b\r\nbb", "c,cc")
                .row("b\"bb", "")
                .toString();

        assertThat(table).isEqualTo("field_name,other\r\naaa,bbb\r\n\"b\r\nbb\",\"c,cc\"\r\n\"b\"\"bb\",\r\n");
    }

    /** Rule 4. */
    @Test
    void every_line_has_as_many_cells_as_the_head() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Csv("a", "b").row("1"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void whatever_is_written_is_read_by_another_library(long seed) throws IOException {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        List<String> cells = random.ints(60, 0, 9)
                .mapToObj(i -> random.ints(random.nextInt(6), 0, 10)
                        .mapToObj(c -> List.of(",", "\"", "\r\n", "\n", " ", "a", "é", "\uD83C\uDF72", "ש", "=")
                                .get(c))
                        .reduce("", String::concat))
                .toList();
        var csv = new Csv("a", "b", "c");
        for (int i = 0; i < cells.size(); i += 3) {
            csv.row(cells.get(i), cells.get(i + 1), cells.get(i + 2));
        }

        try (CSVParser read = CSVParser.parse(csv.toString(), format())) {
            assertThat(read.getHeaderNames()).containsExactly("a", "b", "c");
            assertThat(read.getRecords().stream().flatMap(CSVRecord::stream)).isEqualTo(cells);
        }
    }

    static CSVFormat format() {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreEmptyLines(false)
                .get();
    }

    /** OWASP, "CSV Injection": cells that begin with one of these may be taken for formulas. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠A"})
    void what_looks_like_a_formula_begins_with_an_apostrophe(String formula) {
        assertThat(Csv.text(formula)).isEqualTo("'" + formula);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "olive oil", "1 = 1", "'=1", "<b>", " x"})
    void all_else_stays_as_it_is(String words) {
        assertThat(Csv.text(words)).isEqualTo(words);
    }
}
