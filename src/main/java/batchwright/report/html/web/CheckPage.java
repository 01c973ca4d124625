package batchwright.report.html.web;

import java.util.List;

/**
 * All answers, to be looked at before they are saved.
 *
 * @param cautions what the answers lead to that one must know before
 * @param name what was typed for it
 */
public record CheckPage(Frame frame, List<Line> answers, List<String> cautions, String name) {
    /** @param key by which it is changed */
    public record Line(String key, String label, String says) {}
}
