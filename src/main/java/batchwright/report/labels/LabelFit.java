package batchwright.report.labels;

import java.util.List;

/** How labels are set on a sheet: in the best look in which all that are to look alike fit. */
public record LabelFit(LabelSheet sheet, Typeface face) {
    /** The last look when none fits. */
    public LabelLook look(List<LabelWords> labels) {
        return LabelLook.ALL.stream()
                .filter(look -> labels.stream().allMatch(words -> fits(words, look)))
                .findFirst()
                .orElse(LabelLook.ALL.get(LabelLook.ALL.size() - 1));
    }

    /** What stands on a label in this look. */
    public List<LabelLine> lines(LabelWords words, LabelLook look) {
        return words.lines(look, line -> onOneLine(line, look));
    }

    /** The same of several that are to look alike, in their order: their dates have one form. */
    public List<List<LabelLine>> lines(List<LabelWords> alike, LabelLook look) {
        int form = alike.stream()
                .mapToInt(words -> words.dateForm(look, line -> onOneLine(line, look)))
                .max()
                .orElse(0);
        return alike.stream()
                .map(words -> words.lines(look, line -> onOneLine(line, look), form))
                .toList();
    }

    /** The lines of type that one of its paragraphs takes. */
    public List<String> broken(LabelLine line, LabelLook look) {
        return LinesOfType.of(
                line.text(), widthMm() / look.mm(line.role()), line.role().bold(), face);
    }

    /** Height of all that stands on it [mm]. */
    public double heightMm(List<LabelLine> lines, LabelLook look) {
        return lines.stream()
                .mapToDouble(line -> broken(line, look).size() * look.mm(line.role()) * LabelLook.LINE)
                .sum();
    }

    private boolean fits(LabelWords words, LabelLook look) {
        return heightMm(lines(words, look), look) <= sheet.labelHeightMm().doubleValue() - 2 * sheet.topInsetMm();
    }

    private boolean onOneLine(LabelLine line, LabelLook look) {
        return face.ems(line.text(), line.role().bold()) * look.mm(line.role()) <= widthMm();
    }

    private double widthMm() {
        return sheet.labelWidthMm().doubleValue() - 2 * sheet.sideInsetMm();
    }
}
