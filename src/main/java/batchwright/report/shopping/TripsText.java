package batchwright.report.shopping;

import batchwright.food.Kitchen;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Optional;

/** What the way to the shops costs, apart from what is bought there. */
public final class TripsText {
    private TripsText() {}

    /** Of it 2 trips to shops 4.00 and food 54.34 USD. Empty where trips cost nothing. */
    public static Optional<String> of(List<Session> sessions) {
        Kitchen kitchen = sessions.get(0).kitchen();
        if (!kitchen.shops().tripsCost()) {
            return Optional.empty();
        }
        int trips = sessions.stream().mapToInt(s -> s.shopsVisited().size()).sum();
        Money way = kitchen.shops().trips(trips);
        Money all = sessions.stream().map(Session::cost).reduce(Money.ZERO, Money::plus);
        Currency currency = kitchen.currency();
        return Optional.of("Of it " + Show.count(trips, "trip to a shop", "trips to shops") + " " + currency.text(way)
                + ", and food " + Show.money(all.minus(way), currency) + ".");
    }
}
