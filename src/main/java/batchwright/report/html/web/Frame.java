package batchwright.report.html.web;

import batchwright.report.html.part.Document;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What stands around a page: its title, the way to the others, what was just done, what is wrong.
 *
 * @param token goes with everything that is sent
 * @param said what was done on the page before
 * @param phone whether it is shown on a phone, which pairs no other
 * @param units that were chosen in this browser
 */
public record Frame(
        Place place,
        String heading,
        String token,
        Optional<String> said,
        List<Trouble> troubles,
        boolean phone,
        PageUnits units) {
    public Frame {
        troubles = List.copyOf(troubles);
    }

    public String title() {
        return (troubles.isEmpty() ? "" : "Error: ") + heading + " – " + Document.GENERATOR;
    }

    /** Where one can go from here. */
    public List<Place> places() {
        return Arrays.stream(Place.values())
                .filter(other -> !phone || other != Place.PHONE)
                .toList();
    }

    /** What is wrong with a field; empty when nothing is. */
    public String wrong(String field) {
        return troubles.stream()
                .filter(trouble -> trouble.field().equals(field))
                .map(Trouble::says)
                .findFirst()
                .orElse("");
    }
}
