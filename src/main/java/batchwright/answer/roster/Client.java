package batchwright.answer.roster;

import java.util.Map;
import java.util.Optional;

/**
 * A line of a roster.
 *
 * @param line of the list, from 1
 * @param id as the list has it; any text
 * @param said all other cells of the line that are not empty, by the names of their columns
 * @param wrong why the line cannot be read, if it cannot
 */
public record Client(long line, String id, Map<String, String> said, Optional<String> wrong) {
    /** The column with the client's own id. */
    public static final String ID = "client";
    /** Clients whose lines stand together and say the same here share their pots. */
    public static final String POT = "pot";
    /** A profile by its path or short name, in place of a body. */
    public static final String PROFILE = "profile";
    /** What the client is called on labels; the id, where it is left out. */
    public static final String NAME = "name";

    public Client {
        said = Map.copyOf(said);
    }

    public static Client unreadable(long line, String wrong) {
        return new Client(line, "", Map.of(), Optional.of(wrong));
    }

    public Optional<String> pot() {
        return Optional.ofNullable(said.get(POT));
    }
}
