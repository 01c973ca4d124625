package batchwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EchoTest {
    /**
     * Every character that some terminal may obey or hide. Source: Unicode 15, Unicode Character Database, Bidi_Control and general
     * categories Cc, Cf, Zl, Zp; typed from memory.
     */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x07, 0x08, 0x09, 0x0d, 0x1b, 0x7f, 0x80, 0x85, 0x9b, 0x9f, 0xad, 0x61c, 0x180e, 0x200b, 0x200e,
                0x200f, 0x2028, 0x2029, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e, 0x2060, 0x2066, 0x2067, 0x2068, 0x2069,
                0xfeff, 0xfff9, 0xfffe, 0xffff, 0xd800, 0xdfff
            })
    void what_is_obeyed_or_cannot_be_seen_is_an_escape(int code) {
        String hidden = "a" + (char) code + "b";
        String shown = "a\\u" + "%04X".formatted(code) + "b";

        assertThat(Echo.line(hidden)).isEqualTo(shown);
        assertThat(Echo.lines(hidden + "\n")).isEqualTo(shown + "\n");
        assertThat(Echo.line(Echo.line(hidden))).isEqualTo(shown);
        assertThat(Echo.firstHidden(hidden).isPresent()).isEqualTo(code != '\t');
    }

    @Test
    void characters_beyond_the_first_plane() {
        assertThat(Echo.line("\ud83c\udf72 \udb40\udc41")).isEqualTo("\ud83c\udf72 \\u{E0041}");
    }

    @Test
    void line_ends_stay_in_lines_only() {
        assertThat(Echo.lines("a\nb\n")).isEqualTo("a\nb\n");
        assertThat(Echo.line("a\nb")).isEqualTo("a\\u000Ab");
    }

    /** Names in other scripts, with accents, joined letters and joined emoji are what they seem to be. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "jalapeño",
                "שלום",
                "ผัดไทย",
                "\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645",
                "\ud83d\udc68\u200d\ud83c\udf73",
                "a – b … ½"
            })
    void text_stays(String text) {
        assertThat(Echo.line(text)).isEqualTo(text);
        assertThat(Echo.firstHidden(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u200db", "\u200dé", "é\u200d", "é\u200d\u200dé"})
    void a_joiner_that_joins_nothing_is_an_escape(String text) {
        assertThat(Echo.line(text)).contains("\\u200D");
    }

    @Test
    void a_long_text_keeps_its_beginning_and_its_end() {
        assertThat(Echo.shortened(20, "x".repeat(20))).hasSize(20);
        assertThat(Echo.shortened(20, "begin" + "x".repeat(70_000) + "end"))
                .hasSizeLessThanOrEqualTo(20)
                .startsWith("beginx")
                .contains(" ... ")
                .endsWith("xend");
        for (int most = 10; most < 40; most++) {
            assertThat(Echo.line(Echo.shortened(most, "\ud83c\udf72".repeat(100))))
                    .doesNotContain("\\u");
        }
    }
}
