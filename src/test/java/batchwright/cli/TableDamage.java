package batchwright.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;

/** What spreadsheets and hurried hands do to tables. */
final class TableDamage {
    private static final String[] QUOTES = {"\"", "\"\"", "\"\"\"", "\"a\"b", "a\"b", "'"};

    private TableDamage() {}

    static List<Damage> all() {
        return List.of(
                Damage.harmless("a column moved", (t, r) -> ofCells(t, move(t, r))),
                Damage.harmless("empty cells behind", (t, r) -> ofCells(t, cells -> cells.add(""))),
                Damage.harmless(
                        "blanks around the cells",
                        (t, r) -> ofCells(t, cells -> cells.replaceAll(c -> " " + c + "  "))),
                Damage.harmless("lines of commas", (t, r) -> t + ",,,,\n,\n"),
                Damage.text("a column dropped", (t, r) -> ofCells(t, drop(t, r))),
                Damage.text("names of columns swapped", TableDamage::namesSwapped),
                Damage.text("cells of a line shifted", (t, r) -> ofOneLine(t, r, line -> "," + line)),
                Damage.text("a cell lost", (t, r) -> ofOneLine(t, r, line -> line.replaceFirst(",[^,]*", ""))),
                Damage.text("a cell emptied", (t, r) -> ofOneCell(t, r, cell -> "")),
                Damage.text("a quote broken", (t, r) -> ofOneCell(t, r, cell -> cell + Damage.any(QUOTES, r))),
                Damage.text("a quote in front", (t, r) -> ofOneCell(t, r, cell -> Damage.any(QUOTES, r) + cell)),
                Damage.text("a line twice", (t, r) -> ofOneLine(t, r, line -> line + "\n" + line)),
                Damage.text("a line of another table", (t, r) -> ofOneLine(t, r, line -> line + "\negg,boiled,1.0")),
                Damage.text("semicolons", (t, r) -> t.replace(',', ';')),
                Damage.text("tabs", (t, r) -> t.replace(',', '\t')),
                Damage.text("decimal commas", (t, r) -> t.replace('.', ',')),
                Damage.text("thousands of cells", (t, r) -> ofOneLine(t, r, line -> line + ",x".repeat(5000))),
                Damage.text(
                        "thousands of quotes", (t, r) -> ofOneLine(t, r, line -> line + ",\"\"".repeat(5000) + "\"")),
                Damage.text("all names twice", (t, r) -> ofOneLine(t, r, line -> line + "," + line)));
    }

    private static Consumer<List<String>> move(String text, RandomGenerator random) {
        int width = width(text);
        int from = random.nextInt(width);
        int to = random.nextInt(width);
        return cells -> {
            fill(cells, width);
            cells.add(to, cells.remove(from));
        };
    }

    private static Consumer<List<String>> drop(String text, RandomGenerator random) {
        int width = width(text);
        int column = random.nextInt(width);
        return cells -> {
            fill(cells, width);
            cells.remove(column);
        };
    }

    /** Optional cells at the end of a line may be left out. */
    private static void fill(List<String> cells, int width) {
        while (cells.size() < width) {
            cells.add("");
        }
    }

    private static int width(String text) {
        return split(text.lines().filter(l -> !l.startsWith("#")).findFirst().orElseThrow())
                .size();
    }

    private static String ofCells(String text, Consumer<List<String>> change) {
        return text.lines().map(line -> ofCellsOfLine(line, change)).collect(Collectors.joining("\n", "", "\n"));
    }

    private static String ofCellsOfLine(String line, Consumer<List<String>> change) {
        if (line.startsWith("#")) {
            return line;
        }
        var cells = new ArrayList<>(split(line));
        change.accept(cells);
        return String.join(",", cells);
    }

    private static String namesSwapped(String text, RandomGenerator random) {
        var lines = new ArrayList<>(text.lines().toList());
        int header = 0;
        while (lines.get(header).startsWith("#")) {
            header++;
        }
        var names = new ArrayList<>(split(lines.get(header)));
        Collections.swap(names, random.nextInt(names.size()), random.nextInt(names.size()));
        lines.set(header, String.join(",", names));
        return String.join("\n", lines);
    }

    private static String ofOneLine(
            String text, RandomGenerator random, java.util.function.UnaryOperator<String> change) {
        var lines = new ArrayList<>(text.lines().toList());
        int at = random.nextInt(lines.size());
        lines.set(at, change.apply(lines.get(at)));
        return String.join("\n", lines);
    }

    private static String ofOneCell(
            String text, RandomGenerator random, java.util.function.UnaryOperator<String> change) {
        return ofOneLine(text, random, line -> {
            var cells = new ArrayList<>(split(line));
            int at = random.nextInt(cells.size());
            cells.set(at, change.apply(cells.get(at)));
            return String.join(",", cells);
        });
    }

    /** At the commas outside quotes; cells keep their quotes. */
    private static List<String> split(String line) {
        var cells = new ArrayList<String>();
        var cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            quoted ^= c == '"';
            if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
