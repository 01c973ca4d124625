package batchwright.report.shopping;

import batchwright.answer.BoughtTogether;
import batchwright.food.Food;
import batchwright.plan.Session;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What must be known when everything is bought before the first session: some of it may not keep until it is cooked. */
public final class BoughtEarly {
    private BoughtEarly() {}

    /** Empty when nothing perishable is bought for a later session. */
    public static Optional<String> says(List<Session> sessions) {
        Set<Food> perishable = BoughtTogether.perishableForLater(sessions);
        return perishable.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Bought on day 1 for a later session, although it does not keep long once it is opened or warm: "
                                + perishable.stream().map(Food::name).collect(Collectors.joining(", "))
                                + ". Freeze raw meat and fish on day 1; for everything else, check that the date on the pack is late"
                                + " enough. Or shop before each session (--shop each).");
    }
}
