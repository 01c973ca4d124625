package batchwright.report.html.web;

import java.util.List;
import java.util.Optional;

/**
 * Who eats here.
 *
 * @param begins where a folder of one's own would be made; empty when there is one
 * @param unfinished whether answers wait to be gone on with
 */
public record StartPage(Frame frame, List<Known> eaters, Optional<String> begins, boolean unfinished) {
    /** An eater with a profile. */
    public record Known(String id, String name) {}
}
