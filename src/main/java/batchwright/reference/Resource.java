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

    /** The text from the line end of the header on: every row stands between two line ends. */
    static String rows(String name) {
        try (InputStream in = Resource.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not inside the program.");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
            int header = text.startsWith("#") ? text.lastIndexOf("\n#") + 1 : 0;
            header = text.indexOf('\n', header) + 1;
            return text.substring(text.indexOf('\n', header));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
