package batchwright.report.html.web;

import java.util.List;
import java.util.Optional;

/**
 * The plan on one page: what is asked on one side, what comes of it below.
 *
 * @param choices what there is to choose from
 * @param asked what stands in the fields
 * @param working what the search knows by now; empty when none runs
 * @param shown empty when nothing was asked yet
 */
public record DeskPage(
        Frame frame, Choices choices, Fields asked, Optional<String> working, Optional<DeskShown> shown) {
    /**
     * @param eaters of the kitchen, ticked when they share the pots
     * @param changes what can be moved of each whose profile can be read
     */
    public record Choices(List<Ticked> eaters, List<DeskEater> changes, List<DishChoice> dishes) {}

    /** Something that can be ticked. */
    public record Ticked(String id, String name, boolean on) {}

    /** @param wish any, with or without */
    public record DishChoice(String id, String name, String wish) {}

    /** As typed. */
    public record Fields(String days, String budget, String mostDishes, String sessions, String currency) {}
}
