package batchwright.report.html;

import batchwright.answer.Notice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every caution of the plan, as the terminal shows them: each once, with the names of those it is about. */
final class CautionsSection {
    private CautionsSection() {}

    /** @param eaters how many there are: a caution for all of them names none */
    static void write(Html html, List<Notice> notices, int eaters) {
        Map<String, List<String>> about = new LinkedHashMap<>();
        for (Notice notice : notices) {
            List<String> names = about.computeIfAbsent(notice.caution().text(), text -> new ArrayList<>());
            notice.eater().ifPresent(needs -> names.add(needs.eater().name()));
        }
        html.open("section", "id", "cautions", "class", "block")
                .element("h3", "Cautions")
                .line();
        html.open("ul", "class", "cautions").line();
        about.forEach((text, names) -> {
            html.open("li");
            if (!names.isEmpty() && names.size() < eaters) {
                html.open("strong").name(String.join(" and ", names)).text(": ").close();
            }
            html.text(text).close().line();
        });
        html.close().close().line();
    }
}
