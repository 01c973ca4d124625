package batchwright.report.html.part;

import java.util.List;

/**
 * The way to the pages of a session.
 *
 * @param says what the session is; empty when there is only one
 */
public record WayThrough(String label, String says, List<Link> links) {
    /** @param page by which it is linked to */
    public record Link(String name, String page) {}
}
