package batchwright.plan;

import batchwright.food.Kitchen;
import batchwright.quantity.Currency;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A session of which only what it holds matters: its kitchen is empty. */
public final class TestSession {
    private TestSession() {}

    public static Session of(List<EaterDays> eaters, List<Batch> batches, List<Purchase> shopping) {
        var kitchen = new Kitchen(
                Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Currency.USD, LocalDate.of(2026, 11, 25));
        var request = new PlanRequest(kitchen, List.of(), 1, Optional.empty(), 1, Duration.ofSeconds(1));
        return new Session(1, request, eaters, batches, shopping, Proof.NONE);
    }
}
