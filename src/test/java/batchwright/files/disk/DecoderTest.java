package batchwright.files.disk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.text.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DecoderTest {
    @Test
    void utf8_with_or_without_a_mark_and_with_any_line_end() {
        assertThat(decode("\ufeffjalapeño\r\ntwo\rthree\n".getBytes(UTF_8)).value())
                .map(SourceFile::lines)
                .hasValueSatisfying(lines -> assertThat(lines).containsExactly("jalapeño", "two", "three"));
        assertThat(decode(new byte[0]).value()).isPresent();
    }

    @Test
    void another_encoding_is_named_with_its_place() {
        var read = decode("first\nal jalapeño\n".getBytes(ISO_8859_1));
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).singleElement().satisfies(p -> {
            assertThat(p.at().line()).isEqualTo(2);
            assertThat(p.at().column()).isEqualTo(10);
            assertThat(p.render()).contains("al jalapeño");
        });
    }

    @Test
    void a_character_cut_in_two_at_the_end_is_refused() {
        byte[] cut = {'a', (byte) 0xc3};
        assertThat(decode(cut).value()).isEmpty();
    }

    @Test
    void utf16_and_control_characters_are_refused() {
        assertThat(decode("food".getBytes(UTF_16)).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.wrong()).contains("UTF-16"));
        assertThat(decode("a\u0000b".getBytes(UTF_8)).problems()).hasSize(1);
        assertThat(decode("a\tb".getBytes(UTF_8)).problems()).isEmpty();
    }

    private static Read<SourceFile> decode(byte[] bytes) {
        return Decoder.decode("test.csv", bytes)
                .match(
                        () -> new Read<>(Optional.empty(), List.of()),
                        file -> new Read<>(Optional.of(file), List.of()),
                        problem -> new Read<>(Optional.empty(), List.of(problem)));
    }
}
