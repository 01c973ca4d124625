package batchwright.reference;

import java.util.ArrayList;
import java.util.List;

/** The cells of a line whose text stands in double quotes where it holds a comma or a quote. */
final class Cells {
    private Cells() {}

    static List<String> of(String line) {
        var cells = new ArrayList<String>();
        var cell = new StringBuilder();
        boolean inside = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (!inside && i > 0 && line.charAt(i - 1) == '"') {
                    cell.append(c);
                }
                inside = !inside;
            } else if (c == ',' && !inside) {
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
