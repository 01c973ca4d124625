package batchwright.report.print;

import java.util.ArrayList;

/**
 * Commands to go on with, which read the same files as this one.
 *
 * @param options that every command takes, as this one was given them; begins with a blank when there are any
 */
public record Commands(String options) {
    /** What to type, without the program's name. */
    public String line(String command) {
        return command + options;
    }

    /** Next: dishes lentil_ragu shows how to cook it. */
    public String shows(Iterable<String> dishes) {
        var lines = new ArrayList<String>();
        dishes.forEach(dish -> lines.add(line("dishes " + dish)));
        return "Next: " + String.join(" and ", lines)
                + (lines.size() == 1 ? " shows how to cook it." : " show how to cook them.");
    }
}
