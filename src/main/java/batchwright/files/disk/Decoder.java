package batchwright.files.disk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import batchwright.text.Echo;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Bytes to text: UTF-8 and nothing else, with or without a byte order mark, so that "jalapeño" is never read as something
 * else without a word. Characters that cannot be seen are refused as well: what a file seems to say is what it says.
 */
public final class Decoder {
    private static final String EXPECTED = "expected text in UTF-8: save the file again with the encoding UTF-8";
    static final int MEGABYTE = 1024 * 1024;
    static final int MOST_BYTES = 8 * MEGABYTE;
    private static final int MOST_LINES = 100_000;
    private static final int BEGINNING = 1000;
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private Decoder() {}

    /** @param path as shown to the user */
    public static Found<SourceFile> decode(String path, byte[] bytes) {
        var empty = new SourceFile(path, List.of());
        if (isUtf16(bytes)) {
            return new Found.Unreadable<>(Problem.error(Span.whole(empty), "the file is written in UTF-16", EXPECTED));
        }
        if (lineEnds(bytes) > MOST_LINES) {
            return new Found.Unreadable<>(Problem.error(
                    Span.whole(empty), "the file has more than 100,000 lines", "expected a file edited by hand"));
        }
        var text = CharBuffer.allocate(bytes.length);
        CoderResult result = UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            return new Found.Unreadable<>(notUtf8(path, bytes, text));
        }
        String content = text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK
                ? text.subSequence(1, text.length()).toString()
                : text.toString();
        var file = SourceFile.of(path, content);
        return hidden(file).<Found<SourceFile>>map(Found.Unreadable::new).orElseGet(() -> new Found.There<>(file));
    }

    /** Counted in the bytes: a million lines of text take a hundred times their room. */
    private static int lineEnds(byte[] bytes) {
        int ends = 0;
        for (int i = 0; i < bytes.length; i++) {
            boolean beforeLineFeed = i + 1 < bytes.length && bytes[i + 1] == '\n';
            ends += bytes[i] == '\n' || (bytes[i] == '\r' && !beforeLineFeed) ? 1 : 0;
        }
        return ends;
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

    private static Optional<Problem> hidden(SourceFile file) {
        for (int number = 1; number <= file.lines().size(); number++) {
            String line = file.line(number);
            OptionalInt hidden = Echo.firstHidden(line);
            if (hidden.isPresent()) {
                int at = hidden.getAsInt();
                return Optional.of(Problem.error(
                        file.span(number, at + 1, Character.charCount(line.codePointAt(at))),
                        "a character that cannot be seen (%s)".formatted(Echo.codePoint(line, at)),
                        "expected plain text: delete it"));
            }
        }
        return Optional.empty();
    }
}
