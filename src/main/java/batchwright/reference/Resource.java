package batchwright.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A table inside the program: comment lines, a header, then a line for each row. All characters are ASCII. */
public final class Resource {
    private Resource() {}

    /** The cells of every row. */
    public static List<List<String>> cells(String name) {
        return rows(name).lines().filter(line -> !line.isEmpty()).map(Cells::of).toList();
    }

    /** The names of the columns. */
    static List<String> columns(String name) {
        String text = text(name);
        int header = header(text);
        return Cells.of(text.substring(header, text.indexOf('\n', header)));
    }

    /** The text from the line end of the header on: every row stands between two line ends. */
    static String rows(String name) {
        String text = text(name);
        return text.substring(text.indexOf('\n', header(text)));
    }

    private static int header(String text) {
        int comment = text.startsWith("#") ? text.lastIndexOf("\n#") + 1 : -1;
        return text.startsWith("#") ? text.indexOf('\n', comment) + 1 : 0;
    }

    private static String text(String name) {
        try (InputStream in = Resource.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not inside the program.");
            }
            return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
