package batchwright.app.label;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.files.KitchenReader;
import batchwright.files.disk.FolderFiles;
import batchwright.files.disk.Read;
import batchwright.files.disk.WithChange;
import batchwright.files.table.CsvLines;
import batchwright.files.value.Problems;
import batchwright.food.Kitchen;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import batchwright.write.CannotWrite;
import batchwright.write.EditedFile;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Adds a food to foods/labels.csv as it stands on its pack: one line more, all others stay as they are. */
public final class EnterLabel {
    private static final String TABLE = "foods/labels.csv";
    private static final String ID = "food";
    private static final String NAME = "name";

    private final Workspace workspace;

    public EnterLabel(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * What came of it.
     *
     * @param food its short name
     * @param wrong by column; none when the line was added
     */
    public record Entered(String food, Map<String, String> wrong) {}

    /**
     * Adds the line, unless the reader of the table finds an error in it.
     *
     * @param cells by column of the table, as typed; the short name is made from the name
     * @throws Refused when there is no such table of one's own, or it cannot be written
     */
    public Entered enter(Map<String, String> cells) {
        FolderFiles folder = workspace.ownFolder("and the starter files stay as they are");
        try {
            EditedFile file = EditedFile.of(folder.path(TABLE));
            SourceFile table = SourceFile.of(folder.shown(TABLE), file.text());
            List<String> columns = columns(table);
            Map<String, String> all = new HashMap<>(cells);
            String food = id(cells.getOrDefault(NAME, ""));
            all.put(ID, food);
            refuseUnknown(all, columns);
            String line = columns.stream()
                    .map(column -> quoted(all.getOrDefault(column, "").strip()))
                    .collect(Collectors.joining(","));
            String text = withLine(file.text(), line);
            Map<String, String> wrong = wrong(folder, text, columns);
            if (wrong.isEmpty()) {
                file.replace(text);
            }
            return new Entered(food, wrong);
        } catch (CannotWrite cannot) {
            throw Refused.because(cannot.wrong(), cannot.cure());
        }
    }

    private static List<String> columns(SourceFile table) {
        return CsvLines.of(table, new Problems()).stream()
                .findFirst()
                .map(head -> head.cells().stream().map(Written::text).toList())
                .orElseThrow(() -> Refused.because(
                        table.path() + " has no line that names its columns",
                        "Take that line from the starter files."));
    }

    private static void refuseUnknown(Map<String, String> cells, List<String> columns) {
        String missing = cells.entrySet().stream()
                .filter(cell -> !cell.getValue().isBlank() && !columns.contains(cell.getKey()))
                .map(Map.Entry::getKey)
                .sorted()
                .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            throw Refused.because(
                    "your table has no column for " + missing, "Leave these fields empty, or add the columns.");
        }
    }

    /** Short name: letters and digits of the name. */
    private static String id(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^[_0-9]+|_+$", "");
    }

    private static String quoted(String cell) {
        return cell.contains(",") || cell.contains("\"") || cell.startsWith("#")
                ? "\"" + cell.replace("\"", "\"\"") + "\""
                : cell;
    }

    private static String withLine(String text, String line) {
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        boolean ended = text.endsWith("\n") || text.endsWith("\r");
        return text + (ended ? "" : end) + line + end;
    }

    private Map<String, String> wrong(FolderFiles folder, String text, List<String> columns) {
        SourceFile changed = SourceFile.of(folder.shown(TABLE), text);
        Read<Kitchen> read = KitchenReader.readFoods(new WithChange(folder, TABLE, changed), workspace.cookingDay());
        if (read.value().isPresent()) {
            return Map.of();
        }
        List<CsvLines.Line> lines = CsvLines.of(changed, new Problems());
        CsvLines.Line last = lines.get(lines.size() - 1);
        List<Problem> others = new ArrayList<>();
        Map<String, String> wrong = new HashMap<>();
        read.problems().stream().filter(Problem::isError).forEach(problem -> {
            boolean here = problem.at().file().path().equals(changed.path())
                    && problem.at().line() == last.number();
            if (here) {
                wrong.merge(column(problem, last, columns), says(problem), (a, b) -> a + " " + b);
            } else {
                others.add(problem);
            }
        });
        if (!others.isEmpty()) {
            throw Refused.by(others);
        }
        return Map.copyOf(wrong);
    }

    private static String column(Problem problem, CsvLines.Line line, List<String> columns) {
        String column = NAME;
        for (int c = 0; c < Math.min(columns.size(), line.cells().size()); c++) {
            if (line.cells().get(c).at().column() <= problem.at().column()) {
                column = columns.get(c);
            }
        }
        return column.equals(ID) ? NAME : column;
    }

    private static String says(Problem problem) {
        String wrong = problem.wrong();
        return Character.toUpperCase(wrong.charAt(0)) + wrong.substring(1) + "; " + problem.expected() + "."
                + problem.nearest().map(near -> " Nearest: " + near + ".").orElse("");
    }
}
