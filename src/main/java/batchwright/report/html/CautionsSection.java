package batchwright.report.html;

import batchwright.answer.Notice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every caution of the plan, as the terminal shows them: each once, with the names of those it is about. */
public record CautionsSection(List<Line> lines) {
    /** @param about names; empty when it is for all */
    public record Line(String about, String text) {}

    /** @param eaters how many there are: a caution for all of them names none */
    public static CautionsSection of(List<Notice> notices, int eaters) {
        Map<String, List<String>> about = new LinkedHashMap<>();
        for (Notice notice : notices) {
            List<String> names = about.computeIfAbsent(notice.caution().text(), text -> new ArrayList<>());
            notice.eater().ifPresent(needs -> names.add(needs.eater().name()));
        }
        List<Line> lines = new ArrayList<>();
        about.forEach(
                (text, names) -> lines.add(new Line(names.size() < eaters ? String.join(" and ", names) : "", text)));
        return new CautionsSection(lines);
    }
}
