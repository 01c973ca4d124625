package batchwright.report.notice;

import batchwright.answer.Notice;
import batchwright.report.print.Page;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Each caution once; where it is not about everybody, with the names of those it is about. */
public record NoticesText(int eaters, Page page) {
    public void write(List<Notice> notices) {
        page.heading("CAUTIONS");
        Map<String, List<String>> about = new LinkedHashMap<>();
        for (Notice notice : notices) {
            List<String> names = about.computeIfAbsent(notice.caution().text(), text -> new ArrayList<>());
            notice.eater().ifPresent(needs -> names.add(needs.eater().name()));
        }
        about.forEach((text, names) -> {
            boolean everybody = names.size() == eaters;
            page.item((names.isEmpty() || everybody ? "" : String.join(" and ", names) + ": ") + text);
        });
    }
}
