package batchwright.needs.safety;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.safety.SafetyGrid.Cell;
import batchwright.person.Outcome;
import batchwright.person.Sex;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** The grid as a picture: a colour and a letter for each outcome. */
final class SafetyPicture {
    private static final int CELL = 16;
    private static final int LEFT = 64;
    private static final int PANEL_WIDTH = 470;
    private static final int PANEL_HEIGHT = 272;
    private static final Map<Outcome, String> COLOURS =
            Map.of(Outcome.PLAN, "#d5e8d4", Outcome.WARN, "#fff2b3", Outcome.ASK, "#f8c793", Outcome.REFUSE, "#d98a8a");
    private static final List<Double> YEARS = List.of(30.0, 65.0, 70.0);
    private static final List<Double> BMIS_OF_FAT = List.of(19.0, 21.0, 23.0, 26.0, 32.5);
    private static final List<String> FAT_WORDS = List.of("low", "floor", "lean", "usual", "high");

    private final SafetyGrid grid;
    private final StringBuilder svg = new StringBuilder();

    private SafetyPicture(SafetyGrid grid) {
        this.grid = grid;
    }

    static String of(SafetyGrid grid) {
        return new SafetyPicture(grid).draw();
    }

    private String draw() {
        int height = 48 + YEARS.size() * PANEL_HEIGHT + PANEL_HEIGHT + 16;
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"10\">",
                2 * PANEL_WIDTH, height);
        line("<rect width=\"%d\" height=\"%d\" fill=\"white\"/>", 2 * PANEL_WIDTH, height);
        legend();
        for (int row = 0; row < YEARS.size(); row++) {
            double years = YEARS.get(row);
            for (Sex sex : Sex.values()) {
                panel(
                        left(sex),
                        40 + row * PANEL_HEIGHT,
                        who(sex) + ", " + Numerals.plain(years) + " years, body fat not known; by BMI",
                        SafetyGrid.BMIS.stream().map(Numerals::plain).toList(),
                        (column, rate) -> new Cell(sex, years, SafetyGrid.BMIS.get(column), rate, Optional.empty()));
            }
        }
        for (Sex sex : Sex.values()) {
            fat(sex, 40 + YEARS.size() * PANEL_HEIGHT);
        }
        return svg.append("</svg>\n").toString();
    }

    /** Five fats at each of five BMIs. */
    private void fat(Sex sex, int top) {
        int fats = FAT_WORDS.size();
        List<String> names =
                BMIS_OF_FAT.stream().flatMap(bmi -> FAT_WORDS.stream()).toList();
        panel(
                left(sex),
                top,
                who(sex) + ", 30 years; by body fat at BMI 19, 21, 23, 26, 32.5",
                names,
                (column, rate) -> new Cell(sex, 30, BMIS_OF_FAT.get(column / fats), rate, Optional.of(column % fats)));
    }

    private static int left(Sex sex) {
        return sex == Sex.FEMALE ? 0 : PANEL_WIDTH;
    }

    private static String who(Sex sex) {
        return sex == Sex.FEMALE ? "Women" : "Men";
    }

    private void legend() {
        int x = LEFT;
        for (Outcome outcome : Outcome.values()) {
            line("<rect x=\"%d\" y=\"10\" width=\"%d\" height=\"%d\" fill=\"%s\"/>", x, CELL, CELL, colour(outcome));
            line(
                    "<text x=\"%d\" y=\"22\">%s %s</text>",
                    x + CELL + 4, letter(outcome), outcome.name().toLowerCase(Locale.ROOT));
            x += 90;
        }
    }

    private void panel(int left, int top, String title, List<String> columns, BiFunction<Integer, Double, Cell> cell) {
        line("<text x=\"%d\" y=\"%d\" font-weight=\"bold\">%s</text>", left + LEFT, top + 8, title);
        for (int row = 0; row < SafetyGrid.RATES.size(); row++) {
            double rate = SafetyGrid.RATES.get(SafetyGrid.RATES.size() - 1 - row);
            int y = top + 14 + row * CELL;
            line("<text x=\"%d\" y=\"%d\" text-anchor=\"end\">%s</text>", left + LEFT - 4, y + 12, says(rate));
            for (int column = 0; column < columns.size(); column++) {
                Outcome outcome = grid.of(cell.apply(column, rate)).orElseThrow();
                int x = left + LEFT + column * CELL;
                line(
                        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"white\"/>",
                        x, y, CELL, CELL, colour(outcome));
                line(
                        "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\" font-size=\"8\">%s</text>",
                        x + CELL / 2, y + 11, letter(outcome));
            }
        }
        int bottom = top + 14 + SafetyGrid.RATES.size() * CELL;
        for (int column = 0; column < columns.size(); column++) {
            line(
                    "<text transform=\"translate(%d %d) rotate(-60)\" text-anchor=\"end\" font-size=\"8\">%s</text>",
                    left + LEFT + column * CELL + CELL / 2 + 3, bottom + 8, columns.get(column));
        }
    }

    private static String says(double rate) {
        return rate == 0 ? "hold" : (rate > 0 ? "+" : "-") + Numerals.plain(Math.abs(rate)) + " %";
    }

    private static String letter(Outcome outcome) {
        return outcome == Outcome.PLAN ? "" : outcome.name().substring(0, 1).toLowerCase(Locale.ROOT);
    }

    private static String colour(Outcome outcome) {
        return COLOURS.getOrDefault(outcome, "white");
    }

    private void line(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
