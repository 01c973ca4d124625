package batchwright.files.table;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.FoundIn;
import batchwright.files.disk.Decoder;
import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.io.IOException;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;

/** The place of each cell is where its text stands in the user's line. */
class CsvPlacesTest {
    private final Problems problems = new Problems();

    @Test
    void plain_and_quoted_cells_and_blanks_around_them() {
        List<Written> cells = cells("ab, \"c,d\" ,  e  ,,\"\",f");
        assertThat(cells).extracting(Written::text).containsExactly("ab", "c,d", "e", "", "", "f");
        assertThat(cells).extracting(cell -> cell.at().column()).containsExactly(1, 6, 14, 18, 20, 22);
        assertThat(cells).extracting(cell -> cell.at().length()).containsExactly(2, 3, 1, 1, 1, 1);
    }

    @Test
    void a_doubled_quote_is_one_quote() {
        assertThat(cells("x,\"6\"\" tin\",y")).extracting(Written::text).containsExactly("x", "6\" tin", "y");
    }

    @Test
    void line_ends_of_any_kind_and_a_byte_order_mark_do_not_move_places() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            byte[] bytes = ("\ufefffood,grams" + end + "# note" + end + end + "oats,5" + end).getBytes(UTF_8);
            SourceFile file = FoundIn.there(Decoder.decode("a.csv", bytes));
            List<CsvLines.Line> lines = CsvLines.of(file, problems);
            assertThat(lines).extracting(CsvLines.Line::number).containsExactly(1, 4);
            assertThat(lines.get(0).cells().get(0).text()).isEqualTo("food");
            assertThat(lines.get(1).cells().get(1).at().column()).isEqualTo(6);
        }
    }

    @Test
    void comments_may_have_been_through_a_spreadsheet() {
        var file = SourceFile.of("a.csv", "# one,,\n\"# two, with a comma\",,\n  # three\n,,\nfood,grams\n");
        assertThat(CsvLines.of(file, problems))
                .extracting(CsvLines.Line::number)
                .containsExactly(5);
        assertThat(problems.list()).isEmpty();
    }

    @Test
    void one_bad_quote_spoils_one_line_only() {
        var file = SourceFile.of("a.csv", "food,grams\noats,\"5\nrice,6\n\"x\"y,7\npeas,8\n");
        List<CsvLines.Line> lines = CsvLines.of(file, problems);
        assertThat(lines).extracting(CsvLines.Line::sound).containsExactly(true, false, true, false, true);
        assertThat(problems.list()).extracting(p -> p.at().line()).containsExactly(2, 4);
        assertThat(problems.list()).extracting(p -> p.at().column()).containsExactly(6, 4);
    }

    /** The parser of Apache Commons CSV and our search for places see the same cells in any line. */
    @Test
    void places_and_parser_agree_on_random_lines() throws IOException {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        var format =
                CSVFormat.RFC4180.builder().setIgnoreSurroundingSpaces(true).get();
        int sound = 0;
        for (int i = 0; i < 20_000; i++) {
            String line = randomLine(random);
            CellPlaces places = CellPlaces.of(line);
            boolean parsed;
            int count = 0;
            try (CSVParser parser = CSVParser.parse(line, format)) {
                count = parser.getRecords().get(0).size();
                parsed = true;
            } catch (IOException | java.io.UncheckedIOException broken) {
                parsed = false;
            }
            assertThat(places.badQuote().isEmpty()).as(line).isEqualTo(parsed);
            if (parsed) {
                sound++;
                assertThat(places.places()).as(line).hasSize(count);
            }
        }
        assertThat(sound).isGreaterThan(2_000);
    }

    private static String randomLine(RandomGenerator random) {
        var line = new StringBuilder("x");
        int length = random.nextInt(12);
        for (int i = 0; i < length; i++) {
            line.append("ab,,\"\"  \t".charAt(random.nextInt(9)));
        }
        return line.toString();
    }

    private List<Written> cells(String line) {
        return CsvLines.of(SourceFile.of("a.csv", line), problems).get(0).cells();
    }
}
