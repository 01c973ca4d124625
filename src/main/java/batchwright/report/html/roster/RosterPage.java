package batchwright.report.html.roster;

import batchwright.report.html.part.Document;
import batchwright.report.html.part.Templates;
import batchwright.report.html.part.Tile;
import batchwright.report.print.Json;
import batchwright.report.roster.TogetherJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * One page about all clients: first those whom somebody should look at. It is made from the lines of the answers, one at a time; of very
 * many clients it shows the first, and how many more there are.
 *
 * @param document what stands around it
 * @param tiles counts of all
 * @param attention who needs it
 * @param others who do not
 * @param left clients who are counted and not shown
 */
public record RosterPage(
        Document document, List<Tile> tiles, List<RosterRow> attention, List<RosterRow> others, long left) {
    private static final int MOST_ROWS = 2000;

    /**
     * The page as HTML.
     *
     * @param answers lines of {@link batchwright.report.roster.RosterJson}
     * @param css the style sheet
     */
    public static String of(BufferedReader answers, String css) throws IOException {
        var counted = new Counted();
        for (String line = answers.readLine(); line != null; line = answers.readLine()) {
            Json.read(line).ifPresent(counted::add);
        }
        return Templates.render("roster", counted.page(css));
    }

    private static final class Counted {
        private final List<RosterRow> attention = new ArrayList<>();
        private final List<RosterRow> others = new ArrayList<>();
        private JsonNode pot = MissingNode.getInstance();
        private int place;
        private long all;
        private long planned;
        private long look;

        void add(JsonNode line) {
            if (line.has(TogetherJson.WHOLE)) {
                return;
            }
            boolean shares = line.has("same_pot_as");
            place = shares ? place + 1 : 0;
            pot = shares ? pot : line;
            RosterRow row = RosterRow.of(line, pot, place);
            all++;
            planned += row.plan().isEmpty() ? 0 : 1;
            look += row.attention().isEmpty() ? 0 : 1;
            List<RosterRow> rows = row.attention().isEmpty() ? others : attention;
            if (rows.size() < MOST_ROWS) {
                rows.add(row);
            }
        }

        RosterPage page(String css) {
            return new RosterPage(
                    new Document("Roster – " + Document.GENERATOR, css),
                    List.of(
                            new Tile("Clients", Long.toString(all), ""),
                            new Tile("With a plan", Long.toString(planned), ""),
                            new Tile("Need attention", Long.toString(look), "")),
                    attention,
                    others,
                    all - attention.size() - others.size());
        }
    }
}
