package batchwright.report.html.web;

import java.util.List;
import java.util.Optional;

/**
 * The switch for phones on the same network.
 *
 * @param invitation for one more phone; empty while the door is closed
 * @param phones that are paired
 */
public record PhonePage(Frame frame, Optional<Invitation> invitation, List<Paired> phones) {
    /**
     * @param address to be opened on the phone, once
     * @param code the same as a QR code: a path in modules
     * @param modules of the code on a side
     */
    public record Invitation(String address, String code, int modules, int minutes) {}

    /** @param id by which it is ended */
    public record Paired(int id, String since) {}
}
