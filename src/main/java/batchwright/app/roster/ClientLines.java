package batchwright.app.roster;

import batchwright.answer.roster.Client;
import batchwright.files.table.CsvLines;
import batchwright.files.value.Problems;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The clients of a list, read a line at a time: a table (CSV) whose first line names its columns, or a JSON object in each line. A line
 * that cannot be read is a client, too: one that has only a fault.
 */
final class ClientLines implements Iterator<Client> {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final BufferedReader in;
    private List<String> columns = List.of();
    private boolean isTable;
    private boolean begun;
    private long number;
    private @Nullable Client next;

    ClientLines(BufferedReader in) {
        this.in = in;
    }

    @Override
    public boolean hasNext() {
        while (next == null) {
            String line = line();
            if (line == null) {
                return false;
            }
            next = read(line.strip()).orElse(null);
        }
        return true;
    }

    @Override
    public Client next() {
        if (!hasNext() || next == null) {
            throw new NoSuchElementException();
        }
        Client client = next;
        next = null;
        return client;
    }

    /** Null at the end. Of a line that is too long, the beginning is enough to refuse it. */
    private @Nullable String line() {
        try {
            var text = new StringBuilder();
            int c = in.read();
            if (c < 0) {
                return null;
            }
            for (; c >= 0 && c != '\n'; c = in.read()) {
                if (text.length() <= ClientLine.LONGEST) {
                    text.append((char) c);
                }
            }
            number++;
            return number == 1 && text.indexOf(BYTE_ORDER_MARK) == 0 ? text.substring(1) : text.toString();
        } catch (IOException why) {
            throw new UncheckedIOException(why);
        }
    }

    /** Empty for a line without a client: a blank one, a remark, the names of the columns. */
    private Optional<Client> read(String line) {
        if (line.isEmpty() || line.startsWith("#")) {
            return Optional.empty();
        }
        if (line.length() > ClientLine.LONGEST) {
            return Optional.of(ClientLine.tooLong(number));
        }
        if (!begun) {
            begun = true;
            isTable = !line.startsWith("{");
            if (isTable) {
                return header(line);
            }
        }
        return Optional.of(isTable ? ofTable(line) : ClientLine.ofJson(number, line));
    }

    private Optional<Client> header(String line) {
        columns = cells(line).orElse(List.of());
        Optional<String> wrong = wrongHeader();
        return wrong.map(why -> Client.unreadable(number, why));
    }

    private Optional<String> wrongHeader() {
        if (!columns.contains(Client.ID)) {
            return Optional.of("the first line names no column \"" + Client.ID + "\"");
        }
        return new HashSet<>(columns).size() < columns.size()
                ? Optional.of("the first line names a column twice")
                : Optional.empty();
    }

    private Client ofTable(String line) {
        Optional<List<String>> cells = cells(line);
        if (cells.isEmpty()) {
            return Client.unreadable(number, "a quote of this line is not closed");
        }
        if (cells.get().size() > columns.size()) {
            return Client.unreadable(
                    number,
                    "the line has " + cells.get().size() + " cells, the first line names " + columns.size()
                            + " columns; a cell with a comma stands in double quotes");
        }
        Map<String, String> said = new LinkedHashMap<>();
        for (int i = 0; i < cells.get().size(); i++) {
            said.put(columns.get(i), cells.get().get(i));
        }
        return ClientLine.of(number, said);
    }

    private static Optional<List<String>> cells(String line) {
        var problems = new Problems();
        List<String> cells = new ArrayList<>();
        CsvLines.of(new SourceFile("", List.of(line)), problems)
                .forEach(found -> found.cells().stream().map(Written::text).forEach(cells::add));
        return problems.errors() == 0 ? Optional.of(cells) : Optional.empty();
    }
}
