package batchwright.files;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.util.List;
import java.util.Optional;

/**
 * Bytes to text: UTF-8 and nothing else, with or without a byte order mark, so that "jalapeño" is never read as something
 * else without a word. Characters that cannot be printed are refused as well: no editor writes them on purpose.
 */
final class Decoder {
    private static final String EXPECTED = "expected text in UTF-8: save the file again with the encoding UTF-8";
    static final int MOST_BYTES = 16 * 1024 * 1024;
    private static final int BEGINNING = 1000;
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private Decoder() {}

    /** @param path as shown to the user */
    static Read<SourceFile> decode(String path, byte[] bytes) {
        var empty = new SourceFile(path, List.of());
        if (bytes.length > MOST_BYTES) {
            return Read.failed(Problem.error(
                    Span.whole(empty), "the file is larger than 16 MB", "expected a file edited by hand"));
        }
        if (isUtf16(bytes)) {
            return Read.failed(Problem.error(Span.whole(empty), "the file is written in UTF-16", EXPECTED));
        }
        var text = CharBuffer.allocate(bytes.length);
        CoderResult result = UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            return Read.failed(notUtf8(path, bytes, text));
        }
        String content = text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK
                ? text.subSequence(1, text.length()).toString()
                : text.toString();
        var file = SourceFile.of(path, content);
        return unprintable(file)
                .map(Read::<SourceFile>failed)
                .orElseGet(() -> new Read<>(Optional.of(file), List.of()));
    }

    /** With its byte order mark; or, without one, when every second byte of the beginning is mostly zero. */
    private static boolean isUtf16(byte[] bytes) {
        if (bytes.length < 2) {
            return false;
        }
        boolean marked = (bytes[0] == -2 && bytes[1] == -1) || (bytes[0] == -1 && bytes[1] == -2);
        return marked || mostlyZero(bytes, 0) || mostlyZero(bytes, 1);
    }

    private static boolean mostlyZero(byte[] bytes, int from) {
        int zeros = 0;
        int seen = 0;
        for (int i = from; i < Math.min(bytes.length, BEGINNING); i += 2) {
            seen++;
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return seen > 2 && zeros * 4 > seen * 3;
    }

    /** The line is shown as Western European text, the likeliest encoding of old spreadsheets. */
    private static Problem notUtf8(String path, byte[] bytes, CharBuffer good) {
        int line = 1 + (int) good.chars().filter(c -> c == '\n').count();
        int column = good.length() - (good.toString().lastIndexOf('\n') + 1) + 1;
        String seen = good
                + new String(bytes, ISO_8859_1).substring(UTF_8.encode(good).limit());
        good.rewind();
        return Problem.error(SourceFile.of(path, seen).span(line, column, 1), "this character is not UTF-8", EXPECTED);
    }

    private static Optional<Problem> unprintable(SourceFile file) {
        for (int number = 1; number <= file.lines().size(); number++) {
            String line = file.line(number);
            for (int i = 0; i < line.length(); i++) {
                if (isUnprintable(line.charAt(i))) {
                    return Optional.of(Problem.error(
                            file.span(number, i + 1, 1),
                            "a character that cannot be printed (code %s)".formatted((int) line.charAt(i)),
                            "expected plain text: delete it"));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isUnprintable(char c) {
        return (Character.isISOControl(c) && c != '\t') || c == '\ufffe' || c == '\uffff';
    }
}
