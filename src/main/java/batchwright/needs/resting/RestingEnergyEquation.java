package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A published equation for resting energy. It answers for any body it can, and says when it was made for others. */
public interface RestingEnergyEquation {
    /** Authors and year, with the form where a paper has several. */
    String name();

    Citation source();

    /** The people it was derived on. */
    StudiedPeople studied();

    /** Resting energy a day; empty without the body fat it needs, or for a sex or a BMI that it has no coefficients for. */
    Optional<Energy> perDay(Body body);

    /** Error for one person whose weight, height and body fat are known, as published where a figure is known. */
    default UsualError error(Body body, Energy perDay) {
        return UsualError.tenPercentOf(perDay);
    }

    /** The answer with its error, that of an estimated body fat included, source and caveats; empty when {@link #perDay} is. */
    default Optional<Estimate> estimate(Body body, boolean used) {
        return perDay(body).map(perDay -> {
            UsualError error = FatDoubt.added(error(body, perDay), this, body);
            List<String> caveats = Stream.of(studied().caveats(body), FatDoubt.caveats(this, body))
                    .flatMap(List::stream)
                    .toList();
            Citation citation = new Citation(source().text() + "; error: " + error.says());
            return new Estimate(name(), perDay, error.kcal(), used, citation, caveats);
        });
    }
}
