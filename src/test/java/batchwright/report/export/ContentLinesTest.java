package batchwright.report.export;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 5545, 3.1 (content lines) and 3.3.11 (text). */
class ContentLinesTest {
    @Test
    void a_line_of_75_octets_is_not_folded_and_one_of_76_is() {
        String most = "x".repeat(75 - "NAME:".length());

        assertThat(new ContentLines().add("NAME", most).toString()).isEqualTo("NAME:" + most + "\r\n");
        assertThat(new ContentLines().add("NAME", most + "y").toString()).isEqualTo("NAME:" + most + "\r\n y\r\n");
    }

    /** Of 1 to 4 octets each, so that folds come at every place of a character. */
    @ParameterizedTest
    @ValueSource(strings = {"a", "é", "ש", "€", "\uD83C\uDF72", "aé€\uD83C\uDF72"})
    void no_line_is_longer_than_75_octets_nor_ends_inside_a_character(String unit) throws CharacterCodingException {
        for (int before = 0; before < 6; before++) {
            String value = "z".repeat(before) + unit.repeat(100);
            String folded = new ContentLines().text("DESCRIPTION", value).toString();

            for (byte[] line : octets(folded)) {
                assertThat(line.length).isLessThanOrEqualTo(75);
                UTF_8.newDecoder().decode(ByteBuffer.wrap(line)); // throws inside a character
            }
            assertThat(folded.replace("\r\n ", "")).isEqualTo("DESCRIPTION:" + value + "\r\n");
        }
    }

    private static List<byte[]> octets(String text) {
        return List.of(text.split("\r\n")).stream()
                .map(line -> line.getBytes(UTF_8))
                .toList();
    }

    /** The example of 3.3.11. */
    @Test
    void text_is_escaped() {
        String words = "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.";

        assertThat(new ContentLines().text("D", words).toString().replace("\r\n ", ""))
                .isEqualTo("D:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.\r\n");
        assertThat(new ContentLines().text("D", "a;b,c\\d:e\"f\r\ng\rh").toString())
                .isEqualTo("D:a\\;b\\,c\\\\d:e\"f\\ng\\nh\r\n");
    }

    @Test
    void control_characters_are_not_passed_on() {
        assertThat(new ContentLines().text("D", "a\u0000b\u001bc\u007fd\te").toString())
                .isEqualTo("D:a?b?c?d\te\r\n");
    }
}
