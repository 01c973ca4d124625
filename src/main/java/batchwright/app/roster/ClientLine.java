package batchwright.app.roster;

import batchwright.answer.roster.Client;
import batchwright.report.roster.ClientJson;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** From what a line of a list says to a client; one that says it wrongly is a client with a fault. */
public final class ClientLine {
    /** More characters than any line of a body and its wishes has. */
    static final int LONGEST = 100_000;

    private ClientLine() {}

    /** @param number of the line in the list, from 1 */
    public static Client ofJson(long number, String line) {
        if (line.length() > LONGEST) {
            return tooLong(number);
        }
        return ClientJson.read(line)
                .map(said -> of(number, said))
                .orElseGet(() -> Client.unreadable(number, "the line is no JSON object"));
    }

    /** @param cells by the names of their columns */
    static Client of(long number, Map<String, String> cells) {
        Map<String, String> said = new LinkedHashMap<>(cells);
        said.values().removeIf(String::isBlank);
        String id = said.remove(Client.ID);
        return id == null
                ? Client.unreadable(number, "the line has no \"" + Client.ID + "\"")
                : new Client(number, id, said, Optional.empty());
    }

    static Client tooLong(long number) {
        return Client.unreadable(number, "the line has more than " + LONGEST + " characters");
    }
}
