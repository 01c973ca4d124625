package batchwright.report.html.web;

import java.util.List;

/**
 * What can be moved of an eater.
 *
 * @param eats whether the eater is at the table
 * @param goal surplus or deficit [kcal a day]
 * @param protein floor [g per kg of body weight a day]
 * @param boxes a day
 */
public record DeskEater(
        String id, String name, boolean eats, Figure goal, Figure protein, Figure boxes, List<Snack> snacks) {
    /**
     * @param typed empty when nothing is moved
     * @param written what then holds; empty when it must not be shown
     */
    public record Figure(String typed, String written) {
        public String hint() {
            return written.isEmpty() ? "" : " Profile: " + written + ".";
        }
    }

    /** @param liked whether it may be offered */
    public record Snack(String id, String name, boolean liked) {}
}
