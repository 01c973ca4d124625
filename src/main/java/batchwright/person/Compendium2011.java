package batchwright.person;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What 50 everyday activities cost, by id, in the order of the table.
 *
 * <p>Source: Ainsworth BE et al. 2011 Compendium of Physical Activities: a second update of codes and MET values. Med Sci Sports
 * Exerc 2011;43:1575-1581. The edition of 2024 changes some values.
 */
public final class Compendium2011 {
    private static final String TABLE = "compendium_2011.csv";
    private static final String HEADER = "id,";
    private static final int COLUMNS = 4;

    private Compendium2011() {}

    public static Map<String, ListedActivity> activities() {
        return Loaded.BY_ID;
    }

    /** Read only when somebody asks. */
    private static final class Loaded {
        static final Map<String, ListedActivity> BY_ID = read();
    }

    private static Map<String, ListedActivity> read() {
        Map<String, ListedActivity> byId = new LinkedHashMap<>();
        text().lines()
                .filter(line -> !line.startsWith("#") && !line.startsWith(HEADER))
                .map(Compendium2011::row)
                .forEach(activity -> byId.put(activity.id(), activity));
        return byId;
    }

    /** The name comes last and may hold commas. */
    private static ListedActivity row(String line) {
        String[] cells = line.split(",", COLUMNS);
        return new ListedActivity(cells[0], cells[1], new BigDecimal(cells[2]), cells[3]);
    }

    private static String text() {
        try (InputStream in = Compendium2011.class.getResourceAsStream(TABLE)) {
            if (in == null) {
                throw new IllegalStateException(TABLE + " is not inside the program.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
